// SPDX-License-Identifier: GPL-3.0-or-later
// What the program says of itself: completion scripts and the manual page.
#include "core/commands/commands.h"
#include "core/commands/completion.h"
#include "core/commands/manual_page.h"
#include "core/commands/unknown_word.h"
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
  EXPECT_FALSE(has(err.str(), "as it was")) << "nobody knows how far it came: " << err.str();
}

/// A file's name is bytes.
TEST(CommandLineItself, WritesJsonOfBytesThatAreNoUtf8) {
  std::ostringstream out;
  std::ostringstream err;
  CommandLine line(out, err);
  line.add("write", "Names a file", []() -> Result<Answer> {
    return Answer{{{"out", "l\xe9.pdf"}}, "Written.\n"};
  });
  EXPECT_EQ(line.run({"write", "--json"}), 0) << err.str();
  EXPECT_EQ(Json::parse(out.str())["out"], "l\xEF\xBF\xBD.pdf");
}

TEST(CommandLineItself, SaysWhichWordItDoesNotKnow) {
  const auto said = [](const std::string& arguments) {
    const auto ran = run_command(arguments);
    EXPECT_EQ(ran.status, 2) << arguments;
    EXPECT_EQ(ran.out, "") << arguments;
    return ran.err;
  };
  EXPECT_EQ(said("mixx"), "'mixx' is no command of 'coneline'. Did you mean mix? 'coneline --help' "
                          "lists all there are.\n");
  EXPECT_TRUE(has(said("sel --book none"), "Did you mean sell?"));
  EXPECT_TRUE(has(said("--verzion"), "'--verzion' is no option of 'coneline'. Did you mean "
                                     "--version?"));
  EXPECT_TRUE(has(said("report germinaton"), "'germinaton' is no command of 'coneline report'. Did "
                                             "you mean germination? 'coneline report --help'"));
  EXPECT_TRUE(has(said("mix --pots 3 --colour=red"), "'--colour' is no option of 'coneline mix'."))
      << "said before what is missing";
  EXPECT_TRUE(has(said("mix --shrnk 0.1"), "Did you mean --shrink?"));
  EXPECT_TRUE(has(said("--pots 3 mix"), "It stands behind the command that takes it."));
  EXPECT_TRUE(has(said("opening now"), "'now' is one word too many for 'coneline opening'"));
  EXPECT_EQ(said("trays"), "'coneline trays' wants one of its commands: done. 'coneline trays "
                           "--help' tells what they do.\n");
}

TEST(UnknownWord, IsLookedForBelowGroupsToo) {
  EXPECT_TRUE(has(unknown_told("coneline", awkward(), "print"), "Did you mean labels print?"));
  EXPECT_FALSE(has(unknown_told("coneline", awkward(), "prunt"), "Did you mean"));
}

/// Options of numbers of every kind.
struct Numbers {
  int whole = 5;
  std::int64_t long_whole = 0;
  double real = 0.25;
  std::optional<double> some;
  std::vector<double> list;
  std::string err;
  int status = -1;
};

Numbers numbers_of(std::vector<std::string> words) {
  Numbers numbers;
  std::ostringstream out;
  std::ostringstream err;
  CommandLine line(out, err);
  auto& command = line.add("try", "Takes numbers", []() -> Result<Answer> {
    return Answer{Json::object(), "done\n"};
  });
  command.add_option("-w,--whole", numbers.whole, "Whole").told_default();
  command.add_option("--long", numbers.long_whole, "Whole and long");
  command.add_option("--real", numbers.real, "With decimals").told_default();
  command.add_option("--some", numbers.some, "Perhaps");
  command.add_option("--list", numbers.list, "Several").separated_by(',');
  words.insert(words.begin(), "try");
  numbers.status = line.run(std::move(words)).value_or(-1);
  numbers.err = err.str() + out.str();
  return numbers;
}

TEST(OptionsOfNumbers, AreReadAsEverywhereInTheProgram) {
  const auto read = numbers_of({"--whole", "010", "--long", "-9000000000", "--real", "3.5",
                                "--some", "0.1", "--list", "1,2.5", "--list", "4"});
  EXPECT_EQ(read.status, 0) << read.err;
  EXPECT_EQ(read.whole, 10) << "a zero in front means nothing";
  EXPECT_EQ(read.long_whole, -9000000000);
  EXPECT_EQ(read.real, 3.5);
  EXPECT_EQ(read.some, 0.1);
  EXPECT_EQ(read.list, (std::vector<double>{1, 2.5, 4}));
  const auto left_out = numbers_of({});
  EXPECT_EQ(left_out.status, 0);
  EXPECT_EQ(left_out.whole, 5);
  EXPECT_EQ(left_out.real, 0.25);
  EXPECT_FALSE(left_out.some);
  const auto help = numbers_of({"--help"}).err;
  EXPECT_TRUE(has(help, "--whole INT=5")) << help;
  EXPECT_TRUE(has(help, "--real FLOAT=0.25")) << help;
}

TEST(OptionsOfNumbers, AreRefusedInPlainWords) {
  const auto refused = [](const std::string& option, const std::string& text) {
    const auto read = numbers_of({option, text});
    EXPECT_EQ(read.status, 2) << option << ' ' << text;
    return read.err;
  };
  EXPECT_TRUE(has(refused("--real", "3,5"),
                  "--real: '3,5' has a comma. Write decimals with a point, such as 22.5."));
  EXPECT_TRUE(has(refused("--some", "3,5"), "--some: '3,5' has a comma."));
  EXPECT_TRUE(has(refused("--whole", "3,5"), "--whole: '3,5' is no whole number."));
  EXPECT_TRUE(has(refused("-w", "0x10"), "--whole: '0x10' is no whole number."));
  EXPECT_TRUE(has(refused("--list", "1,two"), "--list: 'two' is no number."));
  EXPECT_TRUE(has(refused("--whole", "3000000000"), "--whole: 3000000000 is too large a number. "
                                                    "Write one from -2147483648 to 2147483647."));
  EXPECT_TRUE(has(refused("--real", "nan"), "--real: 'nan' is no number."));
}

} // namespace
} // namespace coneline::commands
