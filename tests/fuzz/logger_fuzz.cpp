// SPDX-License-Identifier: GPL-3.0-or-later
// Files of temperature loggers. The first byte chooses what the grower states.
#include "core/exchange/logger_file.h"
#include "tests/fuzz/must.h"

#include <cmath>
#include <optional>

using namespace coneline::exchange;
using coneline::fuzz::must;

namespace {

LoggerOptions stated(std::uint8_t choice) {
  LoggerOptions options;
  if ((choice & 1U) != 0)
    options.unit = (choice & 2U) != 0 ? TemperatureUnit::fahrenheit : TemperatureUnit::celsius;
  if ((choice & 4U) != 0)
    options.date_order = static_cast<DateOrder>((choice >> 3U) % 3U);
  if ((choice & 32U) != 0)
    options.delimiter = (choice & 64U) != 0 ? ';' : '\t';
  if ((choice & 128U) != 0)
    options.decimal = ',';
  return options;
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  if (size == 0)
    return 0;
  const std::string text(coneline::fuzz::text_of(data + 1, size - 1));
  const auto read = read_logger(text, "logger.csv", stated(data[0]));
  if (!read) {
    must(!read.error().what.empty(), "a refusal says why");
    return 0;
  }
  must(!read->readings.empty(), "a file without a reading is refused");
  for (std::size_t at = 0; at < read->readings.size(); ++at) {
    must(std::isfinite(read->readings[at].celsius), "a temperature is a number");
    must(at == 0 || read->readings[at - 1].at < read->readings[at].at,
         "readings stand by time, one a moment");
  }
  return 0;
}
