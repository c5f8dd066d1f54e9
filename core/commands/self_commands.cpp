// SPDX-License-Identifier: GPL-3.0-or-later
// What the program says of itself to the desktop it is installed on: completion and manual.
#include "core/commands/commands.h"
#include "core/commands/completion.h"
#include "core/commands/manual_page.h"

namespace coneline::commands {

namespace {

struct Asked {
  std::string shell;
};

std::string completion(const CommandWords& program, const std::string& shell) {
  if (shell == "zsh")
    return zsh_completion(program);
  return shell == "fish" ? fish_completion(program) : bash_completion(program);
}

} // namespace

void add_self(CommandLine& line) {
  const auto asked = std::make_shared<Asked>();
  // Asked when it runs, when every room has brought its commands.
  auto& script =
      line.add("completion", "A completion script for a shell", [asked, &line]() -> Result<Answer> {
        const auto text = completion(line.words(), asked->shell);
        return Answer{{{"shell", asked->shell}, {"script", text}}, text};
      });
  script.add_option("shell", asked->shell, "The shell").required().one_of({"bash", "zsh", "fish"});
  line.add("manual", "The manual page, as source for man", [&line]() -> Result<Answer> {
    const auto text = manual_page(line.words(), CONELINE_VERSION);
    return Answer{{{"page", text}}, text};
  });
}

} // namespace coneline::commands
