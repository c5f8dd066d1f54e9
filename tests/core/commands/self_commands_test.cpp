// SPDX-License-Identifier: GPL-3.0-or-later
// What the program says of itself: completion scripts and the manual page.
#include "core/commands/commands.h"
#include "core/commands/completion.h"
#include "core/commands/manual_page.h"
#include "tests/core/commands/run_command.h"
#include "tests/core/store/scratch.h"

#include <array>
#include <cstdio>
#include <fstream>

namespace coneline::commands {
namespace {

bool has(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

/// A program with all that is awkward in a script: quotes, brackets, choices, a word without a
/// name, a command below another.
CommandWords awkward() {
  CommandWords program;
  program.options = {{{"--help", "-h"}, "", "Help", "", {}, "", false}};
  CommandWords sow{"sow", "The grower's seed: [all] of it", {}, {}};
  sow.options = {{{"--way"}, "", "How", "TEXT", {"deep", "flat"}, "", true},
                 {{"--out"}, "", "Where to", "FILE", {}, "CONELINE_OUT", false},
                 {{}, "batch", ".what - it is", "TEXT", {}, "", true}};
  CommandWords labels{"labels", "Labels", {}, {}};
  labels.commands = {{"labels print", "Print", {}, {}}};
  program.commands = {labels, sow};
  return program;
}

/// What bash offers for the last of the words, as it asks the script.
std::string bash_offers(const std::string& script, const std::string& words) {
  const tests::Scratch scratch;
  std::ofstream(scratch.at("completion")) << script;
  std::ofstream(scratch.at("ask")) << "source '" << scratch.at("completion").string() << "'\n"
                                   << "COMP_WORDS=(" << words << ")\n"
                                   << "COMP_CWORD=$((${#COMP_WORDS[@]} - 1))\n"
                                   << "_coneline\necho \"${COMPREPLY[*]}\"\n";
  const auto command = "bash '" + scratch.at("ask").string() + "'";
  auto* pipe = popen(command.c_str(), "r");
  std::array<char, 4000> said{};
  const auto read = std::fread(said.data(), 1, said.size(), pipe);
  EXPECT_EQ(pclose(pipe), 0);
  return {said.data(), read};
}

TEST(Completion, InBashOffersCommandsOptionsAndChoices) {
  const auto script = bash_completion(awkward());
  EXPECT_EQ(bash_offers(script, "coneline ''"), "labels sow\n");
  EXPECT_EQ(bash_offers(script, "coneline so"), "sow\n");
  EXPECT_EQ(bash_offers(script, "coneline labels ''"), "print\n");
  EXPECT_EQ(bash_offers(script, "coneline sow --"), "--way --out\n");
  EXPECT_EQ(bash_offers(script, "coneline sow --way ''"), "deep flat\n");
  EXPECT_EQ(bash_offers(script, "coneline sow --way f"), "flat\n");
}

TEST(Completion, InZshAndFishEscapesWhatWouldEndAText) {
  const auto zsh = zsh_completion(awkward());
  EXPECT_TRUE(has(zsh, "#compdef coneline"));
  EXPECT_TRUE(has(zsh, "'sow:The grower\xE2\x80\x99s seed\\: \\[all\\] of it'")) << zsh;
  EXPECT_TRUE(has(zsh, "'--way[How]:TEXT:(deep flat)'")) << zsh;
  EXPECT_TRUE(has(zsh, "'--out[Where to]:FILE:_files'")) << zsh;
  EXPECT_TRUE(has(zsh, "print) _coneline_labels_print ;;")) << zsh;
  const auto fish = fish_completion(awkward());
  EXPECT_TRUE(has(fish, "complete -c coneline -f -n '__fish_use_subcommand' -a 'sow'")) << fish;
  EXPECT_TRUE(has(fish, "-l way -x -a 'deep flat' -d 'How'")) << fish;
  EXPECT_TRUE(has(fish, "-l out -r -d 'Where to'")) << fish;
  EXPECT_TRUE(has(fish, "-l help -s h -d 'Help'")) << fish;
  EXPECT_TRUE(has(fish, "__fish_seen_subcommand_from labels; and not __fish_seen_subcommand_from "
                        "print' -a 'print'"))
      << fish;
}

TEST(Completion, OfTheProgramKnowsItsVerbs) {
  const auto ran = run_command("completion bash");
  ASSERT_EQ(ran.status, 0) << ran.err;
  EXPECT_EQ(bash_offers(ran.out, "coneline pot-"), "pot-on\n");
  EXPECT_EQ(bash_offers(ran.out, "coneline enter pl"), "place plant\n");
  EXPECT_TRUE(has(bash_offers(ran.out, "coneline sow --"), "--trays"));
  EXPECT_EQ(bash_offers(ran.out, "coneline completion f"), "fish\n");
  for (const auto* shell : {"zsh", "fish"})
    EXPECT_TRUE(has(run_command(std::string("completion ") + shell).out, "pot-on")) << shell;
  expect_refused("completion csh", 2);
  EXPECT_EQ(run_command("completion bash --json").json().dump().find("pot-on") != std::string::npos,
            true);
}

TEST(Manual, TellsEachCommandWithItsOptions) {
  const auto page = manual_page(awkward(), "1.2-3");
  EXPECT_TRUE(has(page, "\"Coneline 1.2\\-3\""));
  EXPECT_TRUE(has(page, ".SS sow\nThe grower's seed: [all] of it\n")) << page;
  EXPECT_TRUE(has(page, ".SS labels print\nPrint\n")) << page;
  EXPECT_TRUE(has(page, "\\fB\\-\\-way\\fR \\fITEXT\\fR\nHow; one of deep, flat; must be given\n"));
  EXPECT_TRUE(has(page, "Where to; or the variable CONELINE_OUT\n")) << page;
  EXPECT_TRUE(has(page, "\\fIbatch\\fR\n\\&.what \\- it is; must be given\n"))
      << "a dot at the front of a line would be a command: " << page;
}

TEST(Manual, OfTheProgramHasTheVerbsAndTheCautions) {
  const auto ran = run_command("manual");
  ASSERT_EQ(ran.status, 0) << ran.err;
  for (const auto* section :
       {".SS sow\n", ".SS enter plant\n", ".SS pot\\-on\n", ".SH CAUTIONS\n", ".SH EXIT STATUS\n"})
    EXPECT_TRUE(has(ran.out, section)) << section;
  EXPECT_TRUE(has(ran.out, "\\fB\\-\\-trays\\fR"));
  EXPECT_TRUE(has(ran.out, "poisonous"));
}

TEST(CommandLineItself, AsksForAVerbAndKnowsItsVersion) {
  const auto version = run_command("--version");
  EXPECT_EQ(version.status, 0);
  EXPECT_EQ(version.out, "coneline " CONELINE_VERSION "\n");
  EXPECT_EQ(run_command("--help").status, 0);
  EXPECT_TRUE(has(run_command("sow --help").out, "--trays"));
  EXPECT_EQ(run_command("").status, -1) << "the window opens";
  expect_refused("no-such-verb", 2);
  expect_refused("enter", 2);
  expect_refused("labels", 2);
}

/// What cannot be written out is no success.
TEST(CommandLineItself, SaysWhenItsAnswerCannotBeWritten) {
  std::ostringstream out;
  std::ostringstream err;
  out.setstate(std::ios::badbit);
  CommandLine line(out, err);
  add_core_commands(line);
  EXPECT_EQ(
      line.run({"opening", "--seeds", "300", "--filled-at-least", "15", "--assurance", "0.95"}), 1);
  EXPECT_TRUE(has(err.str(), "could not be written")) << err.str();
}

TEST(CommandLineItself, KeepsAFaultOfTheProgramApart) {
  std::ostringstream out;
  std::ostringstream err;
  CommandLine line(out, err);
  line.add("broken", "Throws", []() -> Result<Answer> { throw std::runtime_error("a gap"); });
  line.add("wrong", "Is at fault", []() -> Result<Answer> { return refuse(program_fault("so")); });
  EXPECT_EQ(line.run({"broken"}), 3);
  EXPECT_TRUE(has(err.str(), "A fault of the program: a gap")) << err.str();
  EXPECT_EQ(line.run({"wrong"}), 3);
}

} // namespace
} // namespace coneline::commands
