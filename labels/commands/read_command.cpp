// SPDX-License-Identifier: GPL-3.0-or-later
// coneline labels read PICTURE…
#include "core/commands/table.h"
#include "labels/commands/commands.h"
#include "labels/read/read_pictures.h"

#include <QString>
#include <fmt/format.h>

#include <memory>

namespace coneline::labels {

namespace {

/// File names are bytes and may be no UTF-8, which JSON must be.
std::string readable(const std::string& text) {
  return QString::fromStdString(text).toStdString();
}

commands::Json as_json(const ReadPicture& picture) {
  auto codes = commands::Json::array();
  for (const auto& code : picture.codes)
    codes.push_back(
        {{"text", readable(code.text)}, {"format", code.format}, {"x", code.x}, {"y", code.y}});
  commands::Json json{{"file", readable(picture.file)}, {"codes", std::move(codes)}};
  json["error"] = picture.error ? commands::Json(readable(*picture.error)) : commands::Json();
  return json;
}

std::string as_table(const std::vector<ReadPicture>& pictures) {
  commands::Table table({"picture", "code", "x", "y"});
  std::string errors;
  std::size_t codes = 0;
  for (const auto& picture : pictures) {
    for (const auto& code : picture.codes) {
      const bool usual = code.format == "QRCode";
      table.row({picture.file, usual ? code.text : fmt::format("{} ({})", code.text, code.format),
                 fmt::format("{}", code.x), fmt::format("{}", code.y)});
      ++codes;
    }
    if (picture.error)
      errors += fmt::format("{}: {}.\n", picture.file, *picture.error);
  }
  return (codes > 0 ? table.text() : "") + errors +
         fmt::format("{} {} in {} {}.\n", codes, codes == 1 ? "code" : "codes", pictures.size(),
                     pictures.size() == 1 ? "picture" : "pictures");
}

} // namespace

void add_read_command(commands::CommandLine& line) {
  const auto files = std::make_shared<std::vector<std::string>>();
  auto& command =
      line.add("labels", "read", "Read the labels in pictures of benches",
               [files, &line]() -> Result<commands::Answer> {
                 const auto pictures = read_pictures(*files, [&](std::size_t done) {
                   if (files->size() > 1)
                     line.messages()
                         << fmt::format("{} of {} pictures read\n", done, files->size());
                 });
                 commands::Answer answer{commands::Json::array(), as_table(pictures), false};
                 for (const auto& picture : pictures) {
                   answer.json.push_back(as_json(picture));
                   answer.at_fault = answer.at_fault || picture.error.has_value();
                 }
                 return answer;
               });
  command.add_option("picture", *files, "Pictures: JPEG, PNG and others").required();
}

} // namespace coneline::labels
