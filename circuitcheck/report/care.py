"""The words of care: what the program cannot do for anybody, said the same wherever it is said."""

from __future__ import annotations

from circuitcheck.told import a_word

CAUTIONS = (
    a_word(
        "This program helps competent people; it replaces none. A drawing without findings is not a certificate."
    ),
    (
        a_word(
            "Work on gas, on unvented hot water and on mains wiring is for people qualified and registered to do it "
            "where the law asks."
        )
    ),
    a_word(
        "Local codes and the makers’ instructions come first, before anything that stands in this document."
    ),
    (
        a_word(
            "Scalding, stored pressure and electricity can injure or kill. Isolate electricity, gas and water, and put "
            "up notices, before the circuit is opened."
        )
    ),
    (
        a_word(
            "Relief valves may discharge at any time, near boiling: keep the ends of their pipes clear of people. "
            "Never plug, shut or narrow a relief, a vent or a cold feed."
        )
    ),
    a_word("What the floor carries is for a competent person to confirm."),
)
"""One caution each, in the order in which they are told."""

CARE = a_word(
    "This program helps competent people; it replaces none. Work on gas, on unvented hot water and on mains "
    "wiring is for people qualified and registered to do it where the law asks. Local codes and the makers’ "
    "instructions come first. Scalding, stored pressure and electricity can injure or kill. A drawing without "
    "findings is not a certificate."
)
"""The same in one paragraph, for a small place."""
