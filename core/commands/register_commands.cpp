// SPDX-License-Identifier: GPL-3.0-or-later
// A new book, and what its registers hold: taxa, places, pots, mixes, routes, plants, pollen lots,
// cones.
#include "core/commands/book_options.h"
#include "core/commands/commands.h"
#include "core/commands/first_fault.h"
#include "core/commands/parent_options.h"
#include "core/commands/register_values.h"

#include <fmt/format.h>

#include <memory>
#include <random>

namespace coneline::commands {

namespace {

constexpr int first_series = 10;
constexpr int last_series = 99;

struct NewOptions {
  std::string path;
  std::string name;
  std::optional<int> series;
  std::string hemisphere = "not known";
};

Result<Answer> new_book(const NewOptions& options) {
  // The series tells this book's labels from another's; chance is enough, since two books seldom
  // meet.
  if (book::squeezed(options.name).empty())
    return refuse(fault("no name", "Write what the nursery is called."));
  std::random_device dice;
  const int drawn = std::uniform_int_distribution(first_series, last_series)(dice);
  auto half = book::read_word<book::Hemisphere>(options.hemisphere);
  if (!half)
    return refuse(half.error());
  auto book =
      store::Book::make(options.path, {book::squeezed(options.name), options.series.value_or(drawn),
                                       false, Date::today(), *half});
  if (!book)
    return refuse(book.error());
  const auto title = book->read([](store::Reading& reading) { return reading.title(); });
  if (!title)
    return refuse(title.error());
  Answer given;
  given.json = {{"book", options.path}, {"name", title->name}, {"series", title->series}};
  given.table = fmt::format("A new book for {} in {}; its codes begin with the series {}.\n",
                            title->name, options.path, title->series);
  return given;
}

struct TaxonOptions {
  std::string name;
  std::string leaf = "not known";
  std::string light = "part shade";
  std::string frost = "not known";
  std::string float_test = "unknown";
  std::string ripening;
  std::string after_ripening;
  std::string source;

  void define(Command& command) {
    command.add_option("name", name, "The botanical name").required();
    command.add_option("--leaf", leaf, "green, grey, blue or 'not known'").told_default();
    command.add_option("--light", light, "sun, 'part shade' or shade").told_default();
    command.add_option("--frost", frost, "'no frost', 'light frost', 'hard frost' or 'not known'")
        .told_default();
    command.add_option("--float-test", float_test, "reliable, unreliable or unknown")
        .told_default();
    command.add_option("--ripening", ripening,
                       "Months from pollination to the ripe cone, such as 9-12");
    command.add_option("--after-ripening", after_ripening,
                       "Months the seed ripens on after harvest, such as 0-6");
    command.add_option("--source", source, "Where these values come from");
  }
  Result<std::string> run(store::Writing& writing) const {
    const auto called = further_name(writing.registers().taxa, name, "taxon");
    auto colour = book::read_word<book::LeafColour>(leaf);
    auto cloth = book::read_word<book::Light>(light);
    auto cold = book::read_word<book::Frost>(frost);
    auto floats = book::read_word<book::FloatTest>(float_test);
    auto ripe = range_given(ripening);
    auto after = range_given(after_ripening);
    if (const auto wrong = first_fault(called, colour, cloth, cold, floats, ripe, after))
      return refuse(*wrong);
    return writing
        .put(book::Taxon{{},
                         *called,
                         {*colour, source},
                         {*cloth, source},
                         {*cold, source},
                         {*floats, source},
                         {*ripe, source},
                         {*after, source}})
        .map([&](auto) { return *called; });
  }
};

struct PlaceOptions {
  std::string name;
  std::string kind = "bench";
  std::optional<std::string> within;
  double length = 0;
  double width = 0;
  std::string light = "part shade";
  int walk = 0;

  void define(Command& command) {
    command.add_option("name", name, "What it is called").required();
    command.add_option("--kind", kind, "house, bench or bay").told_default();
    command.add_option("--within", within, "The house of a bench, the bench of a bay, by name");
    command.add_option("--length", length, "mm that pots can stand on; 0 for a house");
    command.add_option("--width", width, "mm");
    command.add_option("--light", light, "sun, 'part shade' or shade").told_default();
    command.add_option("--walk", walk, "Its turn when walking through the nursery");
  }
  Result<std::string> run(store::Writing& writing) const {
    const auto registers = writing.registers();
    auto sort = book::read_word<book::PlaceKind>(kind);
    auto cloth = book::read_word<book::Light>(light);
    auto code = writing.next_code(Kind::place);
    const auto called = further_name(registers.places, name, "place");
    if (const auto wrong = first_fault(called, sort, cloth, code, is_in_millimetres(length),
                                       is_in_millimetres(width)))
      return refuse(*wrong);
    std::optional<book::PlaceId> outer;
    if (within) {
      const auto found = book::row_said(registers.places, *within, "place");
      if (!found)
        return refuse(found.error());
      outer = (*found)->id;
    }
    return writing.put(book::Place{{}, *code, *called, *sort, outer, length, width, *cloth, walk})
        .map([&](auto) { return code->text(); });
  }
};

struct PotRegisterOptions {
  std::string name;
  double litres = 0;
  std::string shape = "round";
  double length = 0;
  std::optional<double> width;
  int cells = 1;
  std::string source;

  void define(Command& command) {
    command.add_option("name", name, "What it is called").required();
    command.add_option("--litres", litres, "Mix it really holds, all cells together").required();
    command.add_option("--shape", shape, "round or rectangular").told_default();
    command.add_option("--length", length, "mm outside; the diameter when round").required();
    command.add_option("--width", width, "mm; the length when left out");
    command.add_option("--cells", cells, "Seeds or plants it takes").told_default();
    command.add_option("--source", source, "Measured, or where the figures come from");
  }
  Result<std::string> run(store::Writing& writing) const {
    const auto called = further_name(writing.registers().pots, name, "pot");
    auto form = book::read_word<book::Shape>(shape);
    if (const auto wrong = first_fault(called, form))
      return refuse(*wrong);
    return writing
        .put(book::Pot{{}, *called, litres, *form, length, width.value_or(length), cells, source})
        .map([&](auto) { return *called; });
  }
};

struct MixRegisterOptions {
  std::string name;
  std::vector<std::string> parts;
  double shrink = 0;
  double loss = 0;
  std::string source;

  void define(Command& command) {
    command.add_option("name", name, "What it is called").required();
    command.add_option("--part", parts, "A part with its share by volume, such as bark=4; repeat")
        .required();
    command.add_option("--shrink", shrink, "Share of the volume lost when the parts are mixed");
    command.add_option("--loss", loss, "Finished mix spilt or left over, as a share");
    command.add_option("--source", source, "Measured, or where the figures come from");
  }
  Result<std::string> run(store::Writing& writing) const {
    const auto called = further_name(writing.registers().mixes, name, "mix");
    if (!called)
      return refuse(called.error());
    book::Mix mix{{}, *called, shrink, loss, source, {}};
    for (const auto& text : parts) {
      auto part = part_given(text);
      if (!part)
        return refuse(part.error());
      mix.parts.push_back(*part);
    }
    return writing.put(mix).map([&](auto) { return *called; });
  }
};

struct RouteOptions {
  std::string taxon;
  double germination = 0;
  std::string months;
  std::vector<std::string> steps;
  std::string source;

  void define(Command& command) {
    command.add_option("taxon", taxon, "The taxon's name").required();
    command.add_option("--germination", germination, "Share of sown seed expected to come up")
        .required();
    command.add_option("--germination-months", months, "From the first to the last, such as 1-9")
        .required();
    command
        .add_option("--step", steps,
                    "pot:mix:months:survival:light, such as 'deep pot:seedling mix:6-12:0.9:part "
                    "shade'; repeat")
        .required();
    command.add_option("--source", source, "Where these values come from");
  }

  Result<std::string> run(store::Writing& writing) const {
    const auto registers = writing.registers();
    const auto found = book::row_said(registers.taxa, taxon, "taxon");
    auto span = range_given(months);
    if (const auto wrong = first_fault(found, span))
      return refuse(*wrong);
    const auto& name = (*found)->name;
    if (registers.route((*found)->id) != nullptr)
      return refuse(fault(fmt::format("'{}' has a route already", name),
                          fmt::format("Change that one: coneline amend route '{}'.", name)));
    book::Route route{{}, (*found)->id, germination, span->value_or(book::Range{}), source, {}};
    for (const auto& text : steps) {
      auto step = step_given(registers, text, source);
      if (!step)
        return refuse(step.error());
      route.steps.push_back(*step);
    }
    return writing.put(route).map([&](auto) { return "a route for " + name; });
  }
};

struct PlantOptions {
  std::string taxon;
  std::string name;
  std::string sex = "not known";
  std::string certainty = "certain";
  std::string origin;
  std::string acquired;
  std::string place;
  std::vector<std::string> papers;
  ParentOptions parents;

  void define(Command& command) {
    parents.define(command);
    command.add_option("taxon", taxon, "The taxon's name").required();
    command.add_option("--name", name, "What you call the plant");
    command.add_option("--sex", sex, "male, female or 'not known'").told_default();
    command.add_option("--certainty", certainty, "Of the taxon: certain, likely or unsure")
        .told_default();
    command.add_option("--origin", origin, "Where it came from");
    command.add_option("--acquired", acquired, "The day, such as 2019-05-02");
    command.add_option("--place", place, "Where it stands, by name");
    command.add_option("--paper", papers,
                       "A document with its number, such as 'import permit=12/345'; repeat");
  }
  Result<std::string> run(store::Writing& writing) const {
    const auto registers = writing.registers();
    const auto found = book::row_said(registers.taxa, taxon, "taxon");
    book::Plant plant;
    auto code = writing.next_code(Kind::plant);
    auto gender = book::read_word<book::Sex>(sex);
    auto sure = book::read_word<book::Certainty>(certainty);
    if (const auto wrong = first_fault(found, code, gender, sure))
      return refuse(*wrong);
    plant = {{}, *code, book::squeezed(name), (*found)->id, *sure, *gender, origin, {}, {}, {}, {}};
    auto day = some_date(acquired, "--acquired");
    if (!day)
      return refuse(day.error());
    plant.acquired = *day;
    if (!place.empty()) {
      const auto at = book::row_said(registers.places, place, "place");
      if (!at)
        return refuse(at.error());
      plant.place = (*at)->id;
    }
    for (const auto& text : papers) {
      const auto equals = text.find('=');
      plant.papers.push_back({text.substr(0, equals),
                              equals == std::string::npos ? "" : text.substr(equals + 1),
                              {},
                              {},
                              {}});
    }
    if (auto known = parents.write_to(plant, registers); !known)
      return refuse(known.error());
    return writing.put(plant).map([&](auto) { return code->text(); });
  }
};

struct PollenOptions {
  std::string plant;
  std::string collected;
  std::optional<double> millilitres;
  std::string store;

  void define(Command& command) {
    command.add_option("plant", plant, "The male plant's code").required();
    command.add_option("--collected", collected, "The day; today when left out");
    command.add_option("--ml", millilitres, "Millilitres");
    command.add_option("--store", store, "How it is kept: 'refrigerator, dry'");
  }
  Result<std::string> run(store::Writing& writing) const {
    const auto registers = writing.registers();
    auto typed = Code::parse(plant);
    auto code = writing.next_code(Kind::pollen);
    auto day = date_or_today(collected, "--collected");
    if (const auto wrong = first_fault(typed, code, day))
      return refuse(*wrong);
    const auto* male = book::coded(registers.plants, *typed);
    if (male == nullptr)
      return refuse(fault(fmt::format("there is no plant {}", typed->text()), "Check the code."));
    if (male->sex == book::Sex::female)
      return refuse(fault(fmt::format("{} is a female plant: it gives no pollen", typed->text()),
                          "Check the code, or the sex."));
    if (male->sex == book::Sex::not_known) {
      auto shown = *male;
      shown.sex = book::Sex::male;
      if (auto put = writing.put(shown); !put)
        return refuse(put.error());
    }
    return writing.put(book::PollenLot{{}, *code, male->id, *day, millilitres, store, {}})
        .map([&](auto) { return code->text(); });
  }
};

struct PollenStoreOptions {
  std::string name;
  std::string years;
  std::string source;

  void define(Command& command) {
    command.add_option("name", name, "What a pollen lot's store begins with: 'refrigerator'")
        .required();
    command.add_option("--years", years, "How long it lasts, such as 2-3; unknown when left out");
    command.add_option("--source", source, "Where that comes from").required();
  }
  Result<std::string> run(store::Writing& writing) const {
    auto range = range_given(years);
    if (!range)
      return refuse(range.error());
    return writing.put(book::PollenStore{{}, name, {*range, source}}).map([&](auto) {
      return name;
    });
  }
};

struct HemisphereOptions {
  std::string hemisphere;

  void define(Command& command) {
    command.add_option("hemisphere", hemisphere, "northern or southern").required();
  }
  Result<std::string> run(store::Writing& writing) const {
    auto half = book::read_word<book::Hemisphere>(hemisphere);
    if (!half)
      return refuse(half.error());
    auto title = writing.title();
    title.hemisphere = *half;
    return writing.put(title).map([&] { return hemisphere; });
  }
};

struct ConeOptions {
  std::string plant;
  std::string seen;

  void define(Command& command) {
    command.add_option("plant", plant, "The female plant's code").required();
    command.add_option("--first-seen", seen, "The day; today when left out");
  }
  Result<std::string> run(store::Writing& writing) const {
    const auto registers = writing.registers();
    auto typed = Code::parse(plant);
    auto code = writing.next_code(Kind::cone);
    auto day = date_or_today(seen, "--first-seen");
    if (const auto wrong = first_fault(typed, code, day))
      return refuse(*wrong);
    const auto* female = book::coded(registers.plants, *typed);
    if (female == nullptr)
      return refuse(fault(fmt::format("there is no plant {}", typed->text()), "Check the code."));
    if (female->sex == book::Sex::male)
      return refuse(fault(fmt::format("{} is a male plant", typed->text()),
                          "Give the female plant, or correct the sex."));
    return writing.put(book::Cone{{}, *code, female->id, *day, {}}).map([&](auto) {
      return code->text();
    });
  }
};

/// "enter taxon", "enter place" and so on.
template <class Options>
void add_register(CommandLine& line, const std::string& name, const std::string& help) {
  struct All {
    BookOption book;
    Options own;
  };
  auto options = std::make_shared<All>();
  auto& command = line.add("enter", name, help, [options, name]() -> Result<Answer> {
    auto book = options->book.open(store::Access::write);
    if (!book)
      return refuse(book.error());
    auto made = book->write([&](store::Writing& writing) { return options->own.run(writing); });
    if (!made)
      return refuse(made.error());
    Answer given;
    given.json = {{"entered", name}, {"as", *made}};
    given.table = fmt::format("Entered: {}\n", *made);
    return given;
  });
  options->book.add_to(command);
  options->own.define(command);
}

} // namespace

void add_registers(CommandLine& line) {
  auto options = std::make_shared<NewOptions>();
  auto& command = line.add("new", "Make a new book", [options] { return new_book(*options); });
  command.add_option("--book", options->path, "The file to make")
      .required()
      .or_variable("CONELINE_BOOK");
  command.add_option("--name", options->name, "The nursery's name").required();
  command.add_option("--series", options->series,
                     "The first two digits of every code, 10 to 99; drawn when left out");
  command.add_option("--hemisphere", options->hemisphere,
                     "northern or southern: when winter is, for plants in the ground");

  add_register<TaxonOptions>(line, "taxon", "A taxon and what is held to be true of it");
  add_register<PlaceOptions>(line, "place", "A house, bench or bay");
  add_register<PotRegisterOptions>(line, "pot", "A pot or seed tray with its real litres");
  add_register<MixRegisterOptions>(line, "mix", "A potting mix and its parts");
  add_register<RouteOptions>(line, "route", "The steps a taxon goes through");
  add_register<PlantOptions>(line, "plant", "A parent plant");
  add_register<PollenOptions>(line, "pollen", "A pollen lot");
  add_register<PollenStoreOptions>(line, "pollen-store",
                                   "A way of keeping pollen and how long it lasts there");
  add_register<HemisphereOptions>(line, "hemisphere", "Where the nursery is: when winter is");
  add_register<ConeOptions>(line, "cone", "A female cone");
}

} // namespace coneline::commands
