"""What is installed for a real room is everything that the tree has."""

import tomllib
from pathlib import Path

ROOT = Path(__file__).parent.parent


def test_every_package_is_installed() -> None:
    """Each folder with code in it is named in pyproject.toml, and none that is not there."""
    listed = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["tool"]["setuptools"]["packages"]
    found = {".".join(init.relative_to(ROOT).parent.parts) for init in (ROOT / "bot").rglob("__init__.py")}
    assert set(listed) - {"bot.migrations", "bot.migrations.versions"} == found
