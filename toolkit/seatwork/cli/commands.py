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
    "inspect": (
        "seatwork.cli.inspect:inspect_parts",
        "Judge measured parts: why they are off, what to change.",
    ),
    "demo": ("seatwork.cli.demo:demo", "Plan, card and inspect the cider mill."),
    "card": ("seatwork.cli.cards:card", "Print the card of a note, or of a whole part."),
    "print": ("seatwork.cli.sheets:print_sheet", "Print a wall chart, checklist or gage sheet."),
    "export": ("seatwork.cli.export:export_pages", "Write notebooks as pages without network."),
    "sources": (
        "seatwork.cli.sources:sources",
        "Where every number comes from, and what is from memory.",
    ),
    "rules": (
        "seatwork.cli.rules:rules",
        "The house rules in force, each with its source.",
    ),
    "coverage": ("seatwork.cli.coverage:report", "What the course covers, by outline code."),
    "hand-out": ("seatwork.cli.handing:hand_out", "Give every learner an own form of a sheet."),
    "take-home": (
        "seatwork.cli.take_home:take_home",
        "Write a lesson, a sheet or the planner as pages that need no server.",
    ),
    "mark": ("seatwork.cli.marking:mark", "Mark what was handed in; nothing in it is run."),
    "check": ("seatwork.cli.referee:check", "Let the referee run your own copy of a sheet."),
    "why": ("seatwork.cli.after_marking:why", "Find out what gives a learner's number."),
    "slips": (
        "seatwork.cli.after_marking:slips",
        "Count the slips of a class, the most frequent first.",
    ),
    "override": ("seatwork.cli.after_marking:override", "Give points yourself, with the reason."),
    "class": ("seatwork.cli.class_now:show_class", "The class in one picture; who needs what."),
    "report": ("seatwork.cli.class_now:report", "One page a learner: three facts, no sum."),
    "record": (
        "seatwork.cli.record:app",
        "The record of a term: check, copy, combine.",
    ),
    "history": ("seatwork.cli.deciding:history", "What the record holds of a learner."),
    "undo": ("seatwork.cli.deciding:undo", "Take a decision or a paper back; it stays written."),
    "excuse": ("seatwork.cli.deciding:excuse", "Excuse a learner from a sheet: no zero."),
    "lost": ("seatwork.cli.deciding:lost", "Say that a learner's paper was lost."),
    "void": ("seatwork.cli.deciding:void", "Say that a sitting gives no mark: no zero."),
    "count-paper": (
        "seatwork.cli.deciding:count_paper",
        "Say which of several papers counts.",
    ),
    "leave": ("seatwork.cli.deciding:leave", "Say that a learner left the course."),
    "sign": ("seatwork.cli.deciding:sign", "Keep that somebody signed on paper, and where it is."),
    "roster": ("seatwork.cli.handing:roster_app", "The roster: learner codes, no names."),
    "stick": ("seatwork.cli.stick:stick", "A copy for rooms without network and without rights."),
    "hub": ("seatwork.cli.hub:app", "A room of learners on one server: the recipe of a hub."),
    "question": (
        "seatwork.cli.questions:app",
        "Question types of your own: begin one, check it, allow it.",
    ),
}
