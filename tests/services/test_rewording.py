"""What is known of a drill outlives its being typed again, and what is no other work asks nothing."""

from pathlib import Path

from tests.chat import kitchen
from tests.database import tables_in

SLIPWAY = """!draft Slipway
plates 8 rows 2
1. 7 courgette, shingle, at 10-4; life 90s; label celery; price 0.02
2. 1 rim, wipe"""
AGAIN = """!draft Slipway again
plates 8 rows 2
1. 7 courgette, shingle, at 10-4
2. 1 rim, wipe"""
RENAMED = AGAIN.replace("courgette", "turnip")


def _step(file: Path) -> str:
    """The first step of the drill published last, as stored."""
    return str(tables_in(file)["spec"][-1]["spec"])


async def test_a_drill_typed_again_keeps_what_it_leaves_unsaid(tmp_path: Path) -> None:
    """Life, label and price stay with the component, and the target and the price of the dish with the set-up."""
    file = tmp_path / "kitchen.db"
    async with kitchen(url=f"sqlite:///{file}") as chat:
        for line in ("!price EUR", SLIPWAY, "!publish", "!target 12 2:40", "!price 12 dish 14.50"):
            await chat.say("ime", line)
        for text in (AGAIN, "!publish"):
            (told,) = await chat.say("ime", text)
        assert told.startswith("Published as drill 12, Slipway again.")
        for kept in ('"life_s":90', '"labels":["celery"]', '"price":"0.02"'):
            assert kept in _step(file)
        newest = str(tables_in(file)["wording"][-1]["wording"])
        assert '"target_s":160' in newest
        assert '"dish_price":"14.50"' in newest


async def test_another_component_brings_nothing_over(tmp_path: Path) -> None:
    """The label, life and price of the courgette are not the turnip's."""
    file = tmp_path / "kitchen.db"
    async with kitchen(url=f"sqlite:///{file}") as chat:
        for line in ("!price EUR", SLIPWAY, "!publish", RENAMED, "!publish"):
            await chat.say("ime", line)
        assert '"component":"turnip"' in _step(file)
        assert "celery" not in _step(file)
        assert '"price":null' in _step(file)


async def test_a_label_alone_asks_nothing(tmp_path: Path) -> None:
    """A live drill whose step gets a life and a label stays the same drill: one line says so, and nothing is open."""
    file = tmp_path / "kitchen.db"
    async with kitchen(url=f"sqlite:///{file}") as chat:
        for line in ("!price EUR", SLIPWAY, "!publish", "!post now 12"):
            await chat.say("ime", line)
        told = await chat.say("ime", "!step 1 7 courgette, shingle, at 10-4; life 60s; label mustard")
        assert told == ["The work is the same: drill 12 is told so from now on, its bests and boards stay."]
        for kept in ('"life_s":60', '"labels":["mustard"]', '"price":"0.02"'):
            assert kept in _step(file)
            assert kept in str(tables_in(file)["live_drill"][-1]["drill"])
        assert tables_in(file)["question"] == []
        assert tables_in(file)["draft"] == []
