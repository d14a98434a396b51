"""The command line: every fault at the start is one sentence and a code of its own, never a traceback."""

import os
import subprocess
import sys
from pathlib import Path
from typing import get_args

import pytest
from pydantic import BaseModel

from bot.settings import Settings, load_settings

GOOD = """
[matrix]
homeserver = "http://127.0.0.1:1"
user = "@platepace:tern.example"
"""


def run(directory: Path, config: str | None, **environment: str) -> subprocess.CompletedProcess[str]:
    """``platepace run`` with this settings file."""
    path = directory / "config.toml"
    if config is not None:
        path.write_text(config, "utf-8")
    command = [sys.executable, "-m", "bot", "run", "--config", str(path)]
    clean = {name: value for name, value in os.environ.items() if not name.startswith("PLATEPACE_")}
    return subprocess.run(command, env=clean | environment, capture_output=True, text=True, check=False, cwd=directory)


@pytest.mark.parametrize(
    ("config", "secrets", "code", "told"),
    [
        pytest.param(None, {}, 78, "Copy config.example.toml to start with", id="no file"),
        pytest.param("[matrix", {}, 78, "is not valid TOML", id="no TOML"),
        pytest.param(
            GOOD + "homesrver = 'x'", {}, 78, "unknown key matrix.homesrver; did you mean homeserver?", id="key"
        ),
        pytest.param(GOOD + "[peple]", {}, 78, "unknown key peple; did you mean people?", id="section"),
        pytest.param("[storage]", {}, 78, "matrix: Field required", id="no account"),
        pytest.param(GOOD + "[kitchen]\nlanguage = 'xx'", {}, 78, "unknown language 'xx'; there are", id="language"),
        pytest.param(GOOD + "[kitchen]\nzone = 'Europe/Lodnon'", {}, 78, "did you mean 'Europe/London'?", id="zone"),
        pytest.param(GOOD, {}, 78, "neither is given. Set PLATEPACE_PASSWORD", id="no secret"),
        pytest.param(GOOD, {"PLATEPACE_PASSWORD": "a", "PLATEPACE_TOKEN": "b"}, 78, "both are given", id="two secrets"),
        pytest.param(
            GOOD.replace("user =", "password_file = 'gone'\nuser ="),
            {},
            78,
            "cannot read the secret in gone",
            id="file",
        ),
        pytest.param(GOOD, {"PLATEPACE_PASSWORD": "a"}, 69, "http://127.0.0.1:1 cannot be used now", id="no server"),
        pytest.param(
            GOOD + "[storage]\nurl = 'sqlite:////nowhere/at/all.db'",
            {"PLATEPACE_PASSWORD": "a"},
            74,
            "The database cannot be used",
            id="no database",
        ),
        pytest.param(
            GOOD + "[storage]\nurl = 'mysql://a/b'", {"PLATEPACE_PASSWORD": "a"}, 78, "storage.url must read", id="url"
        ),
    ],
)
def test_a_fault_at_the_start_is_one_sentence(
    tmp_path: Path, config: str | None, secrets: dict[str, str], code: int, told: str
) -> None:
    """It names what is wrong and what to do, on standard error."""
    ended = run(tmp_path, config, **secrets)
    assert ended.returncode == code, ended.stderr
    assert told in ended.stderr
    assert "Traceback" not in ended.stderr
    assert ended.stdout == ""


def test_no_secret_is_repeated(tmp_path: Path) -> None:
    """A faulty database address may hold a password, which is not said again."""
    ended = run(tmp_path, GOOD + "[storage]\nurl = 'mysql://noor:hunter2@a/b'", PLATEPACE_PASSWORD="swordfish")
    assert "hunter2" not in ended.stderr
    assert "swordfish" not in ended.stderr


def test_the_example_is_a_valid_file_that_names_every_key() -> None:
    """What the example says is what the settings know, those of comments too."""
    path = Path(__file__).parents[1] / "config.example.toml"
    load_settings(path)
    text = path.read_text("utf-8")
    for section, field in Settings.model_fields.items():
        assert f"[{section}]" in text
        kinds = (field.annotation, *get_args(field.annotation))
        (model,) = (kind for kind in kinds if isinstance(kind, type) and issubclass(kind, BaseModel))
        for key in model.model_fields:
            assert f"{key} =" in text
