"""What a column is given comes back equal, whatever it is."""

import json
from dataclasses import replace
from datetime import UTC, datetime, timedelta, timezone
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st
from sqlalchemy.dialects import sqlite

from bot.domain.drill import Spec, Step
from bot.domain.run import Result, Sent
from bot.services.ports.messages import Outgoing
from bot.services.ports.run_records import Held
from bot.storage.columns import Kept, Moment
from tests.fakes import MONDAY, a_drill

DIALECT = sqlite.dialect()
PRICES = st.decimals(min_value=0, max_value=10**6, places=4)
STEPS = st.builds(Step, price=st.none() | PRICES)


def there_and_back(column: Kept, value: object) -> object:
    """Through the column's text and out again."""
    return column.process_result_value(column.process_bind_param(value, DIALECT), DIALECT)


@given(st.builds(Spec, steps=st.tuples(STEPS, STEPS)))
def test_a_spec_survives_its_json(spec: Spec) -> None:
    """Any words, any price to the last place."""
    assert there_and_back(Kept(Spec), spec) == spec


@given(st.builds(Sent))
def test_a_submission_survives_its_json(sent: Sent) -> None:
    """Any line as read."""
    assert there_and_back(Kept(Sent), sent) == sent


@given(st.builds(Outgoing, figures=st.dictionaries(st.text(), st.none() | st.integers() | st.text())))
def test_a_message_survives_its_json(note: Outgoing) -> None:
    """Any text, reference and figure."""
    assert there_and_back(Kept(Outgoing), note) == note


finite = st.floats(allow_nan=False, allow_infinity=False)
maybe = st.none() | finite


@given(
    st.builds(Result, standard_s=finite, alone_s=finite, change_s=finite, net_s=maybe, pace_s=maybe, levelled_s=maybe)
)
def test_a_result_survives_its_json_to_the_last_bit(result: Result) -> None:
    """Floats come back the same, so that equal results stay ties."""
    assert there_and_back(Kept(Result), result) == result


def test_equal_values_are_equal_texts_with_money_as_text() -> None:
    """Keys are sorted, there are no spaces, and a price is a string of digits."""
    step = replace(a_drill().spec.steps[0], price=Decimal("0.10"))
    text = Kept(Step).process_bind_param(step, DIALECT)
    assert text is not None
    assert '"price":"0.10"' in text
    assert text == json.dumps(json.loads(text), sort_keys=True, separators=(",", ":"), ensure_ascii=False)


def test_nothing_stays_nothing() -> None:
    """None is no text and no moment."""
    assert there_and_back(Kept(Held), None) is None
    assert Moment().process_bind_param(None, DIALECT) is None
    assert Moment().process_result_value(None, DIALECT) is None


@given(st.datetimes(timezones=st.just(UTC)), st.integers(-14 * 60, 14 * 60))
def test_a_moment_is_the_same_from_any_zone(moment: datetime, minutes: int) -> None:
    """It is stored in UTC, and comes back aware even from a database that forgets zones."""
    try:
        elsewhere = moment.astimezone(timezone(timedelta(minutes=minutes)))
    except OverflowError:
        return
    stored = Moment().process_bind_param(elsewhere, DIALECT)
    assert stored is not None
    assert stored.utcoffset() == timedelta(0)
    assert Moment().process_result_value(stored.replace(tzinfo=None), DIALECT) == moment


def test_a_moment_without_a_zone_is_refused() -> None:
    """A bare time of day would mean another moment on another machine."""
    with pytest.raises(ValueError, match="needs its zone"):
        Moment().process_bind_param(MONDAY.replace(tzinfo=None), DIALECT)
