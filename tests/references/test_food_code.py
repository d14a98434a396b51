"""The temperature that cold mise is held at, against the FDA Food Code, 3-501.19: 5 degrees C (41 F) or below.

Recomputed: 41 degrees Fahrenheit are 5 Celsius.
"""

from bot.replies.phrases import english

START_COLD_F = 41


def test_cooked_starch_is_held_at_the_codes_temperature() -> None:
    """Cooked rice and noodles are told to be kept at 5 degrees or below."""
    celsius = (START_COLD_F - 32) * 5 / 9
    assert f"{celsius:.0f} degrees or below" in english()("caution-cooked-starch", what="rice")
