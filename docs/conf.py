"""The documentation site. `cargo xtask docs` lays the sources together and runs Sphinx on them.

Nothing is loaded from elsewhere when a page is read: formulas become MathML here.
"""

from __future__ import annotations

import re

from docutils import nodes
from latex2mathml.converter import convert

import flamewright

project = "flamewright"
author = "the flamewright contributors"
copyright = author  # noqa: A001
release = version = flamewright.__version__
language = "en"
# A page that only another one links to is not an error.
suppress_warnings = ["toc.not_included"]

extensions = ["myst_nb", "sphinx.ext.autodoc", "sphinx.ext.napoleon"]
html_theme = "alabaster"
html_theme_options = {
    "description": "The sums of a gas heating engineer's visit: unit-safe, sourced, with uncertainty",
    "fixed_sidebar": False,
    "page_width": "70rem",
    "sidebar_includehidden": True,
}
html_static_path = ["_static"]
html_css_files = ["site.css"]
html_copy_source = False
html_show_sourcelink = False
html_math_renderer = "mathml"

# The notebooks are stored executed; the tests execute them again.
nb_execution_mode = "off"
nb_merge_streams = True
myst_enable_extensions = ["dollarmath", "amsmath", "deflist"]
myst_dmath_double_inline = True
myst_heading_anchors = 3

autodoc_member_order = "bysource"
autodoc_typehints = "signature"
napoleon_numpy_docstring = True
napoleon_custom_sections = [("Settings", "params_style"), "Sources", "Accuracy", "Cautions"]


def formula(latex: str) -> str:
    """LaTeX with what the converter does not know put in its terms."""
    latex = latex.strip("`")  # $`…`$ keeps other readers of Markdown off the signs of LaTeX
    # Letters of a unit or a name of the program are set upright, as a word.
    latex = re.sub(r"\\mathrm\{((?:[A-Za-z]|\\_)+)\}", lambda m: "\\text{" + m[1].replace("\\_", " ") + "}", latex)
    return latex.replace("\\displaystyle", "")


def inline(translator, node: nodes.math) -> None:
    shown = "block" if "\\displaystyle" in node.astext() else "inline"
    page = convert(formula(node.astext()), display="inline")
    translator.body.append(page.replace("<math", '<math displaystyle="true"', 1) if shown == "block" else page)
    raise nodes.SkipNode


def block(translator, node: nodes.math_block) -> None:
    page = convert(formula(node.astext()), display="block")
    translator.body.append(f'<div class="formula">{page}</div>')
    raise nodes.SkipNode


def setup(app) -> dict[str, bool]:
    app.add_html_math_renderer("mathml", (inline, None), (block, None))
    return {"parallel_read_safe": True, "parallel_write_safe": True}
