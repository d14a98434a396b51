"""Volumes of dots, beads, quenelles and pulls, against solid geometry.

Sources: Archimedes, On the Sphere and Cylinder (a sphere is two thirds of its cylinder; recomputed), and Cavalieri's
principle, the sum of thin slices (recomputed).
"""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.domain.amounts import Amount, volume_mm3

SIDE_MM = st.floats(1, 200)


@given(SIDE_MM)
def test_a_sphere_is_two_thirds_of_its_cylinder(wide: float) -> None:
    """An ellipsoid of three equal sides is Archimedes' sphere, and a cap half as high as it is wide is half of it."""
    cylinder = math.pi * (wide / 2) ** 2 * wide
    assert volume_mm3("ellipsoid", (wide, wide, wide)) == pytest.approx(cylinder * 2 / 3)
    assert volume_mm3("cap", (wide, wide / 2)) == pytest.approx(cylinder / 3)


@given(SIDE_MM, SIDE_MM, SIDE_MM)
def test_an_ellipsoid_is_a_stretched_sphere(length: float, wide: float, high: float) -> None:
    """Stretching a sphere stretches its volume by the same share (Cavalieri)."""
    unit = volume_mm3("ellipsoid", (1.0, 1.0, 1.0))
    assert volume_mm3("ellipsoid", (length, wide, high)) == pytest.approx(unit * length * wide * high)


@given(st.floats(4, 20), st.floats(0.2, 1.0))
def test_a_cap_is_the_sum_of_its_slices(wide: float, share: float) -> None:
    """A flatter dot or a taller one is what a thousand thin discs of its sphere come to, within a thousandth."""
    high = share * wide / 2
    radius = ((wide / 2) ** 2 + high**2) / (2 * high)
    slices = [high * (nth + 0.5) / 1000 for nth in range(1000)]
    discs = sum(math.pi * (radius**2 - (radius - high + z) ** 2) * high / 1000 for z in slices)
    assert volume_mm3("cap", (wide, high)) == pytest.approx(discs, rel=1e-3)


@pytest.mark.parametrize(
    ("amount", "ml"),
    [
        (Amount("ml", shape="cap", mm=(10, 5)), "0.26"),
        (Amount("ml", shape="ellipsoid", mm=(55, 28, 24)), "19"),
        (Amount("ml", shape="slab", mm=(110, 25, 2)), "5.5"),
        (Amount("ml", shape="cap", mm=(4, 2)), "0.017"),
    ],
)
def test_a_touch_in_two_figures(amount: Amount, ml: str) -> None:
    """A dot of 10 mm, a quenelle, a pull and a bead, as they are rounded before they are multiplied (recomputed)."""
    assert str(amount.a_touch) == ml
