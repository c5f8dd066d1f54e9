// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/commands.h"

namespace coneline::commands {

void add_core_commands(CommandLine&) {}

} // namespace coneline::commands
