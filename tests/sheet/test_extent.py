"""The box round all, and what lies lowest, kept up as boxes change: as by looking at all of them."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.picture.labels import Rect
from circuitcheck.sheet.extent import NOWHERE, Extent

edges = st.integers(-40, 40).map(float)


@st.composite
def boxes(draw: st.DrawFn) -> Rect:
    left, top = draw(edges), draw(edges)
    return left, top, left + draw(st.integers(0, 30)), top + draw(st.integers(0, 30))


owners = st.sampled_from("abcdefgh")


@given(
    st.dictionaries(owners, boxes()),
    st.lists(st.tuples(owners, boxes() | st.none(), st.booleans())),
    edges,
    edges,
)
def test_it_is_as_by_looking_at_all(
    first: dict[str, Rect], changes: list[tuple[str, Rect | None, bool]], left: float, right: float
) -> None:
    extent, known = Extent(first), dict(first)
    for owner, box, asks in changes:
        extent.put(owner, box)
        known.pop(owner, None)
        if box is not None:
            known[owner] = box
        if asks:
            assert extent.whole() == whole(known)
    assert extent.whole() == whole(known)
    low = max((box[3] for box in known.values() if box[0] < right and left < box[2]), default=NOWHERE)
    assert extent.lowest(left, right) == low


def whole(known: dict[str, Rect]) -> Rect | None:
    if not known:
        return None
    return (
        min(box[0] for box in known.values()),
        min(box[1] for box in known.values()),
        max(box[2] for box in known.values()),
        max(box[3] for box in known.values()),
    )
