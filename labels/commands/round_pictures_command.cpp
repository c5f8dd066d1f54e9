// SPDX-License-Identifier: GPL-3.0-or-later
// coneline round pictures FOLDER --place H… --book FILE: a whole round from pictures, and
// coneline round read FOLDER: what stands in them, without a book (the window asks for that).
#include "core/commands/book_options.h"
#include "core/commands/seen_answer.h"
#include "labels/commands/commands.h"
#include "labels/round/bench_pictures.h"

#include <QString>
#include <fmt/format.h>

#include <memory>

namespace coneline::labels {

namespace {

std::string readable(const std::string& text) {
  return QString::fromStdString(text).toStdString(); // names are bytes and may be no UTF-8
}

Result<std::vector<BenchPicture>> read_folder(const std::string& folder,
                                              commands::CommandLine& line) {
  auto files = pictures_in(folder);
  if (!files)
    return refuse(files.error());
  return read_bench_pictures(*files, [&](std::size_t done) {
    line.messages() << fmt::format("{} of {} pictures read\n", done, files->size());
  });
}

commands::Json errors_of(const std::vector<BenchPicture>& pictures, std::string& told) {
  auto errors = commands::Json::array();
  for (const auto& picture : pictures)
    if (picture.error) {
      errors.push_back({{"file", readable(picture.file)}, {"error", readable(*picture.error)}});
      told += fmt::format("{}: {}\n", picture.file, *picture.error);
    }
  return errors;
}

struct Options {
  commands::BookOption book;
  std::string folder;
  std::string place;
  std::string on;
  std::string who;
  bool accept = false;
};

Result<commands::Answer> go(const Options& options, commands::CommandLine& line) {
  std::optional<Date> otherwise;
  if (!options.on.empty()) {
    auto day = commands::date_or_today(options.on, "--on");
    if (!day)
      return refuse(day.error());
    otherwise = *day;
  }
  auto book = options.book.open(store::Access::write);
  if (!book)
    return refuse(book.error());
  const auto place = commands::code_given(*book, options.place);
  if (!place)
    return refuse(place.error());
  const auto pictures = read_folder(options.folder, line);
  if (!pictures)
    return refuse(pictures.error());
  const auto labels = labels_read(*pictures, otherwise, Date::today());
  if (!labels)
    return refuse(labels.error());
  const auto found = book->read([&](store::Reading& reading) {
    return work::seen_in_pictures(reading, reading.registers(), *place, *labels);
  });
  if (!found)
    return refuse(found.error());
  auto answer = commands::seen_answer(
      *book, *found, book::SeenBy::picture,
      options.accept ? commands::Moves::accept : commands::Moves::propose, options.who);
  if (!answer)
    return answer;
  std::string told;
  answer->json["errors"] = errors_of(*pictures, told);
  answer->table += told;
  answer->at_fault = !told.empty();
  return answer;
}

Result<commands::Answer> read(const std::string& folder, commands::CommandLine& line) {
  const auto pictures = read_folder(folder, line);
  if (!pictures)
    return refuse(pictures.error());
  commands::Answer answer{commands::Json::array(), {}, false};
  for (const auto& picture : *pictures) {
    commands::Json texts = commands::Json::array();
    for (const auto& text : picture.texts)
      texts.push_back(readable(text));
    answer.json.push_back(
        {{"file", readable(picture.file)},
         {"taken", picture.taken ? commands::Json(picture.taken->iso()) : commands::Json()},
         {"texts", texts},
         {"error", picture.error ? commands::Json(readable(*picture.error)) : commands::Json()}});
    answer.table +=
        fmt::format("{}: {}, {} labels\n", picture.file,
                    picture.taken ? picture.taken->iso() : "no day", picture.texts.size());
  }
  return answer;
}

} // namespace

void add_round_pictures_command(commands::CommandLine& line) {
  const auto options = std::make_shared<Options>();
  auto& command = line.add("round", "pictures",
                           "A round from pictures: marks what was seen, lists what was not, "
                           "proposes moves",
                           [options, &line] { return go(*options, line); });
  options->book.add_to(command);
  command.add_option("folder", options->folder, "The folder with the pictures").required();
  command.add_option("--place", options->place, "The house or bench that was pictured").required();
  command.add_option("--on", options->on, "The day of pictures that do not say theirs");
  command.add_option("--who", options->who, "Who took them");
  command.add_flag("--accept", options->accept, "Enter the moves, after a look at them");
  const auto folder = std::make_shared<std::string>();
  line.add("round", "read", "The labels in a folder of pictures and the day of each",
           [folder, &line] { return read(*folder, line); })
      .add_option("folder", *folder, "The folder with the pictures")
      .required();
}

} // namespace coneline::labels
