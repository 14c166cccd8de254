"""Pressure drop of water in a pipe: Darcy-Weisbach, with the friction factor solved from Colebrook-White.

Sources: Darcy-Weisbach and Colebrook-White as in CIBSE Guide C and every handbook of hydraulics (from
memory); the bounds of the transition (Reynolds 2,000 and 4,000) likewise. Between them no law holds:
the factor is taken on a straight line from one law's value to the other's, and the result says so.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from math import isfinite, log, log10, pi

GRAVITY_M_S2 = 9.80665

LAMINAR_BELOW = 2000.0
TURBULENT_FROM = 4000.0
LAMINAR_TIMES_REYNOLDS = 64.0

ROUGHNESS_MM = {"copper": 0.0015, "plastic": 0.003, "steel": 0.046}
"""Wall roughness. Copper: CIBSE Guide C's basis. Plastic, steel (commercial): from memory."""

LOSS_FACTORS = {
    "bend": 0.75,
    "tee, straight on": 0.4,
    "tee, through the branch": 1.0,
    "isolating valve": 0.17,
    "check valve": 2.0,
}
"""Loss factors of fittings (90° elbow, tee run, tee branch, open gate valve, swing check valve): Perry's
Chemical Engineers' Handbook. Handbooks differ by up to a factor of two."""

UNITEMISED_SHARE = 0.25
"""Fittings not itemised: 25 % of the pipe's length (Building Services Engineering, 5th ed., example 4.2)."""


class Law(StrEnum):
    """Which law of friction a result rests on."""

    STILL = "no flow"
    LAMINAR = "laminar"
    TRANSITION = "between laminar and turbulent"
    TURBULENT = "Colebrook-White"


@dataclass(frozen=True, slots=True)
class Flowing:
    """Water in one pipe: the working behind its pressure drop. Signs follow the flow's."""

    velocity_m_s: float
    reynolds: float
    factor: float
    law: Law
    gradient_pa_m: float
    friction_pa: float
    fittings_pa: float

    @property
    def drop_pa(self) -> float:
        """Friction and fittings together."""
        return self.friction_pa + self.fittings_pa


def area_m2(bore_mm: float) -> float:
    """Cross-section of a round bore in square metres."""
    return pi * (bore_mm / 1000) ** 2 / 4


def velocity_m_s(flow_l_s: float, bore_mm: float) -> float:
    """Mean velocity in metres per second of a flow in litres per second."""
    return flow_l_s / 1000 / area_m2(bore_mm)


def colebrook(reynolds: float, relative_roughness: float) -> float:
    """The Darcy friction factor of turbulent flow: the root of Colebrook-White's equation, to 1e-12.

    1/√f = −2 log10(k/3.7 + 2.51/(Re √f)), by Newton's method in 1/√f, which converges from any
    start here since the equation is convex and rising in it.
    """
    rough, smooth = relative_roughness / 3.7, 2.51 / reynolds
    # Haaland's explicit formula, within 2 %, to begin with.
    x = -1.8 * log10(rough**1.11 + 6.9 / reynolds)
    for _ in range(20):
        inner = rough + smooth * x
        step = (x + 2 * log10(inner)) / (1 + 2 / log(10) * smooth / inner)
        x -= step
        if abs(step) <= 1e-13 * x:
            break
    return 1 / (x * x)


def friction_factor(reynolds: float, relative_roughness: float) -> tuple[float, Law]:
    """The Darcy friction factor and the law it came from; `reynolds` above 0."""
    if reynolds <= LAMINAR_BELOW:
        return LAMINAR_TIMES_REYNOLDS / reynolds, Law.LAMINAR
    if reynolds >= TURBULENT_FROM:
        return colebrook(reynolds, relative_roughness), Law.TURBULENT
    low = LAMINAR_TIMES_REYNOLDS / LAMINAR_BELOW
    high = colebrook(TURBULENT_FROM, relative_roughness)
    share = (reynolds - LAMINAR_BELOW) / (TURBULENT_FROM - LAMINAR_BELOW)
    return low + share * (high - low), Law.TRANSITION


def pressure_drop(
    flow_l_s: float,
    *,
    bore_mm: float,
    length_m: float,
    density_kg_m3: float,
    viscosity_pa_s: float,
    roughness_mm: float = ROUGHNESS_MM["copper"],
    loss_factor: float = 0.0,
) -> Flowing:
    """The pressure drop along a pipe and through its fittings (`loss_factor`, their K added up).

    Δp = (f L/d + K) × density × v²/2. Raises ValueError for a bore that is not above 0, a negative
    length or a number that is none.
    """
    numbers = (flow_l_s, bore_mm, length_m, density_kg_m3, viscosity_pa_s, roughness_mm, loss_factor)
    if not all(map(isfinite, numbers)) or bore_mm <= 0 or length_m < 0 or roughness_mm < 0:
        raise ValueError("a pipe needs a bore above 0, a length of 0 or more, and finite numbers")
    velocity = velocity_m_s(flow_l_s, bore_mm)
    reynolds = density_kg_m3 * abs(velocity) * bore_mm / 1000 / viscosity_pa_s
    if reynolds == 0:
        return Flowing(0.0, 0.0, 0.0, Law.STILL, 0.0, 0.0, 0.0)
    factor, law = friction_factor(reynolds, roughness_mm / bore_mm)
    dynamic = density_kg_m3 * velocity * abs(velocity) / 2
    gradient = factor / (bore_mm / 1000) * dynamic
    return Flowing(velocity, reynolds, factor, law, gradient, gradient * length_m, loss_factor * dynamic)


def flow_at_gradient_l_s(
    gradient_pa_m: float,
    *,
    bore_mm: float,
    density_kg_m3: float,
    viscosity_pa_s: float,
    roughness_mm: float = ROUGHNESS_MM["copper"],
) -> float:
    """The flow that loses so much pressure a metre: the other way round, by halving to 1e-12.

    Raises ValueError for a gradient that is not above 0.
    """
    if gradient_pa_m <= 0:
        raise ValueError("the gradient must be above 0")

    def gradient(flow_l_s: float) -> float:
        return pressure_drop(
            flow_l_s,
            bore_mm=bore_mm,
            length_m=1,
            density_kg_m3=density_kg_m3,
            viscosity_pa_s=viscosity_pa_s,
            roughness_mm=roughness_mm,
        ).gradient_pa_m

    low, high = 0.0, 1e-3
    while gradient(high) < gradient_pa_m:
        low, high = high, high * 2
    while high - low > 1e-12 * high:
        middle = (low + high) / 2
        if gradient(middle) < gradient_pa_m:
            low = middle
        else:
            high = middle
    return (low + high) / 2


def kv_drop_pa(flow_l_s: float, kv_m3h: float) -> float:
    """The pressure across a passage of that kv, signed as the flow: 1 bar drives kv cubic metres an hour.

    Source: definition of kv, BS EN 60534-2-1; its reference water is cold, the small change of density
    is left out as in the trade's tables.
    """
    flow_m3_h = flow_l_s * 3.6
    return 1e5 * flow_m3_h * abs(flow_m3_h) / kv_m3h**2


def design_flow_l_s(
    power_kw: float, difference_k: float, *, capacity_j_kgk: float, density_kg_m3: float
) -> float:
    """The flow that carries a power at a difference of temperature: P / (density × c × Δt).

    Raises ValueError for a difference that is not above 0.
    """
    if difference_k <= 0:
        raise ValueError("the flow must be hotter than the return")
    return power_kw * 1e6 / (capacity_j_kgk * difference_k * density_kg_m3)
