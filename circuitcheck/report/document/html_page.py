"""The frame of the HTML document: its style sheet for light, dark, narrow and printed, and its head."""

from __future__ import annotations

from circuitcheck.picture.colours import ROLES, printed

FAMILY = "Source Sans 3"
POLICY = (
    "default-src 'none'; style-src 'unsafe-inline'; font-src data:; img-src data:; base-uri 'none'; "
    "form-action 'none'"
)
"""Nothing is fetched and nothing runs: what a drawing's file says can only ever be text."""

_RULES = """
*{box-sizing:border-box}
html{-webkit-text-size-adjust:100%}
body{margin:0;background:var(--paper);color:var(--ink);font:16px/1.5 "Source Sans 3",system-ui,sans-serif;
font-feature-settings:"tnum"}
main{max-width:60rem;margin:0 auto;padding:1.5rem 1rem 4rem}
h1{font-size:1.8rem;line-height:1.2;font-weight:600;margin:0 0 .3rem}
h2{font-size:1.4rem;line-height:1.25;font-weight:600;margin:3rem 0 .8rem;padding-top:1rem;
border-top:1px solid var(--hairline)}
h3{font-size:1.05rem;font-weight:600;margin:1.8rem 0 .4rem}
p{margin:0 0 .7rem;overflow-wrap:anywhere}
h1,h2,h3,li,td,th{overflow-wrap:anywhere}
b{font-weight:600}
a{color:var(--select)}
a:focus-visible,.wide:focus-visible{outline:2px solid var(--select);outline-offset:2px}
.lead{font-size:1.15rem;color:var(--ink-2)}
.second{color:var(--ink-2);font-size:.88rem}
.strong{font-weight:600}
ul{margin:0 0 .8rem;padding-left:1.2rem}
.columns{columns:2 18rem;column-gap:2rem}
.columns li{break-inside:avoid}
nav ul{list-style:none;padding:0;display:flex;flex-wrap:wrap;gap:.2rem 1.2rem}
nav a{display:inline-block;padding:.3rem 0}
.counts{display:flex;flex-wrap:wrap;gap:.4rem 1.6rem;margin:1rem 0;padding:0;list-style:none}
.counts li,.graded{display:flex;align-items:center;gap:.5rem}
.mark{width:22px;height:22px;flex:none}
.graded{margin-top:2.2rem}
.graded .second{font-weight:400;white-space:nowrap}
.wide{overflow-x:auto;margin:0 0 1rem}
table{border-collapse:collapse;width:100%;font-size:.93rem}
th,td{text-align:left;vertical-align:top;padding:.35rem .8rem .35rem 0;font-weight:400;
border-bottom:1px solid var(--hairline)}
thead th{font-size:.82rem;font-weight:600;color:var(--ink-2);border-bottom:2px solid var(--edge);vertical-align:bottom}
.n{text-align:right;font-variant-numeric:tabular-nums;padding-right:1.4rem}
th:last-child,td:last-child{padding-right:0}
.b{font-weight:600}
.tick{display:inline-block;width:1.1em;height:1.1em;border:1.5px solid var(--edge);border-radius:2px}
.fill{display:flex;justify-content:flex-end;min-width:5em;min-height:1.5em;border-bottom:1.5px solid var(--edge);
color:var(--ink-2);font-size:.82rem}
figure{margin:.8rem 0 1.2rem}
figure svg{display:block;max-width:100%;height:auto;border:1px solid var(--hairline);border-radius:6px;
background:var(--paper)}
figure.sheet svg{width:100%}
footer{margin-top:3rem;color:var(--ink-2);font-size:.88rem}
svg text{font-family:"Source Sans 3",system-ui,sans-serif}
@media(max-width:40rem){
main{padding:1rem .9rem 3rem}
figure.sheet .wide svg{width:60rem;max-width:none}
table.stack,table.stack tbody,table.stack tr,table.stack td{display:block;width:auto}
table.stack thead{display:none}
table.stack tr{padding:.55rem 0;border-bottom:1px solid var(--hairline)}
table.stack td{border:0;padding:.1rem 0;text-align:left}
table.stack td:empty{display:none}
table.stack td[data-head]:not(:empty)::before{content:attr(data-head) ": ";color:var(--ink-2);font-size:.82rem}
table.two,table.two tbody{display:block}
table.two tr{display:grid;grid-template-columns:1fr 1.3fr}
table.two td:empty{display:none}
table.stack td .fill{display:inline-flex;min-width:9em;vertical-align:bottom}
}
@media print{
@page{margin:16mm 14mm}
html{font-size:9.5pt}
body{font-size:1rem}
main{max-width:none;padding:0}
nav{display:none}
h2{break-after:avoid}
h3,.graded{break-after:avoid}
tr,figure,.together{break-inside:avoid}
section.page{break-before:page}
section.page h2{border:0;margin-top:0}
.wide{overflow:visible}
figure svg{max-height:19cm}
a{color:inherit;text-decoration:none}
}
"""


def style(faces: str) -> str:
    """The whole style sheet; `faces` are the rules that bring the font along."""
    light, dark = _variables(0), _variables(1)
    printed_ = "".join(f"--{_name(role)}:{printed(role)};" for role in ROLES)
    by_class = "".join(
        f".f-{_name(role)}{{fill:var(--{_name(role)})}}.s-{_name(role)}{{stroke:var(--{_name(role)})}}"
        for role in ROLES
    )
    return (
        f"{faces}:root{{color-scheme:light dark;{light}}}\n"
        f"@media(prefers-color-scheme:dark){{:root{{{dark}}}}}\n"
        f"@media print{{:root{{color-scheme:light;{printed_}}}}}\n{by_class}{_RULES}"
    )


def _variables(column: int) -> str:
    return "".join(f"--{_name(role)}:{values[column]};" for role, values in ROLES.items())


def _name(role: str) -> str:
    """A role as the style sheet writes it."""
    return role.rstrip("_").replace("_", "-")
