// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/manual_page.h"

namespace coneline::commands {

namespace {

/// A text as man(7) shows it letter by letter: hyphens that can be copied, no command at the front
/// of a line.
std::string roff(const std::string& text) {
  std::string out;
  for (const char c : text) {
    if (c == '\\')
      out += "\\e";
    else if (c == '-')
      out += "\\-";
    else if (c == '\n')
      out += ' ';
    else if ((c == '.' || c == '\'') && out.empty())
      out += std::string("\\&") + c;
    else
      out += c;
  }
  return out;
}

std::string name_line(const OptionWords& option) {
  if (option.names.empty())
    return "\\fI" + roff(option.placed) + "\\fR";
  std::string line;
  for (const auto& name : option.names)
    line += (line.empty() ? "\\fB" : ", \\fB") + roff(name) + "\\fR";
  if (!option.value.empty())
    line += " \\fI" + roff(option.value) + "\\fR";
  return line;
}

std::string about(const OptionWords& option) {
  auto text = option.about;
  const auto add = [&](const std::string& more) { text += (text.empty() ? "" : "; ") + more; };
  if (!option.choices.empty()) {
    std::string words;
    for (const auto& choice : option.choices)
      words += (words.empty() ? "" : ", ") + choice;
    add("one of " + words);
  }
  if (!option.environment.empty())
    add("or the variable " + option.environment);
  if (option.required)
    add("must be given");
  return text;
}

/// Help and --json go with every command and are told once.
bool told_above(const OptionWords& option) {
  return !option.names.empty() &&
         (option.names.front() == "--help" || option.names.front() == "--json");
}

void add_command(std::string& page, const CommandWords& command) {
  if (!command.commands.empty()) {
    for (const auto& below : command.commands)
      add_command(page, below);
    return;
  }
  page += ".SS " + roff(command.name) + "\n" + roff(command.about) + "\n";
  for (const auto& option : command.options)
    if (!told_above(option))
      page += ".TP\n" + name_line(option) + "\n" + roff(about(option)) + "\n";
}

} // namespace

std::string manual_page(const CommandWords& program, const std::string& version) {
  std::string page = ".\\\" SPDX-License-Identifier: GPL-3.0-or-later\n";
  page += ".TH CONELINE 1 \"\" \"Coneline " + roff(version) + "\" \"User Commands\"\n";
  page += R"(.SH NAME
coneline \- from a pollinated cone to a plant in its pot
.SH SYNOPSIS
.B coneline
.RI [ BOOK.coneline ]
.br
.B coneline
.I COMMAND
.RI [ OPTIONS ]
.SH DESCRIPTION
Coneline keeps the line from a pollinated cone to a plant in its pot, for growers of cycads and other plants that bear
cones: every seed counted from one account into another, labels that scan, what is due, how many come up of each cross,
and how much mix and bench the coming seasons need.
.PP
Without a command the window opens, with the book named or the last one. With a command it does one thing and ends. All
of a nursery stands in one file, its book.
.SH OPTIONS
.TP
\fB\-h\fR, \fB\-\-help\fR
Help, of the program or of a command.
.TP
\fB\-\-version\fR
The version.
.TP
\fB\-\-book\fR \fIFILE\fR
The book. Alone it opens the window with that book; every command that needs a book takes it, or the variable
.BR CONELINE_BOOK .
.TP
\fB\-\-json\fR
With any command: one JSON document on standard output instead of a table.
.SH COMMANDS
)";
  for (const auto& command : program.commands)
    add_command(page, command);
  page += R"(.SH EXIT STATUS
.TP
0
Done.
.TP
1
The input or the book is at fault; the message says what, where, by how much, and what to do. Nothing was written.
.TP
2
The command line is wrong.
.TP
3
A fault of the program. The book is as it was.
.SH ENVIRONMENT
.TP
.B CONELINE_BOOK
The book, where none is named.
.TP
.B CONELINE_TODAY
The day the window takes for today, such as 2026\-03\-09.
.SH FILES
.TP
.I ~/.config/coneline/coneline.conf
The last book and the look of the window.
.TP
.I BOOK.coneline
A book. Copy it while the program is closed.
.SH CAUTIONS
All parts of cycads are poisonous, seed most of all: wear gloves, and keep pets, livestock and children away. Potting mix
can carry Legionella: wet it and wear a mask. The label of a product, the local code and the doctor or authority have the
last word.
)";
  return page;
}

} // namespace coneline::commands
