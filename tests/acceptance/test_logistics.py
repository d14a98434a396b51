"""What a demanding chef asks before a run: mise, table and order (numbers: fixtures of the project's model)."""

from tests.chat import Chat

CRISP = """!draft High water
plates 12 rows 2
1. 1 gel, line, at 8 to 2
2. 1 coffee, crumb
3. 5 courgette, shingle
4. 1 bean puree, quenelle ; life 2m
5. 2 crisp, lean ; life 90s
6. 6 oil, bead
7. 2 leaf, pair"""


async def test_mise_of_full_tide(chat: Chat) -> None:
    """`mise` lists what twelve plates of Full tide take, what comes back, what is binned, and closes with the rules."""
    (told,) = await chat.say("noor", "!mise 1 11B")
    assert told.split("\n") == [
        "Mise for Full tide (drill 11B), one run of 12 plates, 10 % spare in it. China: 14.",
        "- gel: 79 ml (6 ml a plate), and 25 ml that stay in the bottle",
        "- coffee: 53 g (4 g a plate)",
        "- courgette: 66 (5 a plate)",
        "- bean puree: 251 ml (19 ml a plate)",
        "- triangle: 27 (2 a plate)",
        "- oil: 1.3 ml (0.1 ml a plate), and what the dropper holds",
        "- leaf: 27 (2 a plate)",
        "Tools: bottle, crumb spoon, quenelle spoon, dropper.",
        "Comes back for another run: courgette 50 % (2 runs at most), bean puree 50 % (2 runs at most), triangle 98 %,"
        " leaf 90 %.",
        "Cold until the run, binned the same day: gel, courgette, bean puree, oil.",
        "Read each label, “may contain” too: gel (wheat), coffee, courgette, bean puree (sulphites), triangle, oil,"
        " leaf.",
        'Practice food is never served, tasted or returned: label it "practice, not for eating" with the date.',
        "Local food-safety, employment and safety rules, and your chef, come first.",
    ]


async def test_table_of_170_cm(chat: Chat) -> None:
    """2 x 6 of 27 cm is 8 cm short, 2 x 5 fits and is drawn, and a third row is refused for reach."""
    (told,) = await chat.say("ime", "!table 11B 170x100")
    assert told.split("\n") == [
        "Full tide (drill 11B), 12 plates of 27 cm, on a table of 170 x 100 cm:",
        "- 1 x 12: 352 x 30 cm, 182 cm short.",
        "- 2 x 6: 178 x 59 cm, 8 cm short.",
        "- 3 x 4: 120 x 88 cm, refused, the third row is out of reach from one side.",
        "What fits: 10 plates, 2 x 5, 149 x 59 cm (chef: `plates 10`, `rows 2`; another set-up).",
        "Far row: 10 9 8 7 6; near row: 1 2 3 4 5. Walked in that order of numbers, there and back.",
        "Two rows: walk both sides, or the shortest cook reaches the far mark (59 cm) without leaning over food,"
        " sleeves secured.",
    ]


async def test_orders_of_full_tide(chat: Chat) -> None:
    """From one batch to plate by plate, with the waits of what does not keep."""
    (told,) = await chat.say("noor", "!order 11B")
    assert told.split("\n") == [
        "Full tide (drill 11B), 12 plates. Time, and how long each component waits:",
        "- step by step (as set) 8:30: gel 8:27, courgette 7:00, bean puree 4:40, oil 1:41",
        "- waves of 6 9:00: gel 4:26, courgette 3:38, bean puree 2:26, oil 0:52",
        "- waves of 4 9:30: gel 3:06, courgette 2:31, bean puree 1:41, oil 0:36",
        "- waves of 3 10:10: gel 2:28, courgette 1:59, bean puree 1:21, oil 0:29",
        "- plate by plate 14:34: gel 1:08, courgette 0:52, bean puree 0:36, oil 0:12",
        "Fastest: step by step. With a life on a step (`; life 90s`) I pick the largest that keeps it.",
    ]


async def test_lives_pick_waves_of_four(chat: Chat) -> None:
    """Quenelle 2 min and crisp 90 s, as a chef writes them, are kept by waves of 4 and by none larger."""
    await chat.say("ime", CRISP)
    await chat.say("ime", "!publish")
    (told,) = await chat.say("noor", "!order 12")
    assert told.split("\n")[1:] == [
        "- step by step (as set) 8:30: bean puree 4:40 (keeps 2:00), crisp 3:13 (keeps 1:30)",
        "- waves of 6 9:00: bean puree 2:26 (keeps 2:00), crisp 1:41 (keeps 1:30)",
        "- waves of 4 9:30: bean puree 1:41, crisp 1:10",
        "- waves of 3 10:10: bean puree 1:21, crisp 0:55",
        "- plate by plate 14:34: bean puree 0:36, crisp 0:24",
        "Largest that keeps every life: waves of 4.",
    ]
