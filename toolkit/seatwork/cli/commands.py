"""The table of commands: name, where its function or Typer app lives, one line of help.

A command's module is imported when the command is given, never for ``seatwork --help``.
"""

COMMANDS: dict[str, tuple[str, str]] = {
    "open": ("seatwork.cli.opening:open_workbook", "Make the workbook and open it in JupyterLab."),
    "doctor": (
        "seatwork.cli.opening:doctor",
        "Look the installation over; each fault with its fix.",
    ),
    "plan": ("seatwork.cli.plan:plan", "Plan a print note: sizes, steps, speeds, stops, checks."),
    "sources": (
        "seatwork.cli.sources:sources",
        "Where every number comes from, and what is from memory.",
    ),
    "rules": (
        "seatwork.cli.rules:rules",
        "The house rules in force, each with its source.",
    ),
}
