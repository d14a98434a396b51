"""Paces: seconds a touch on one spec, levelled seconds across specs, and how a time is shown."""

LEVELLED_TOUCH_S = 1.5
"""One levelled touch is this much standard time, so a cook exactly at standard shows 1.50 on every drill."""


def pace_s(net_s: float, touches: int) -> float:
    """Net seconds a touch: fair between plate counts of one spec, not between specs."""
    return net_s / touches


def levelled_s(net_s: float, standard_s: float) -> float:
    """Net seconds a levelled touch: may stand beside another spec."""
    return net_s * LEVELLED_TOUCH_S / standard_s


def clock_text(seconds: float) -> str:
    """A time as shown: ``0:09``, ``2:44``, and from an hour ``1:02:03``.

    To the nearest second, a half going to the even one (ISO 80000-1, annex B, rule A; the default of IEEE 754). The
    sum is taken as computed, in doubles: one that ends a hair above the half is above it.
    """
    minutes, second = divmod(round(seconds), 60)
    hours, minute = divmod(minutes, 60)
    return f"{hours}:{minute:02d}:{second:02d}" if hours else f"{minute}:{second:02d}"
