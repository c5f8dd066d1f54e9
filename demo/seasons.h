// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Three seasons of the invented nursery, day by day, each entry made by the verb that a grower
// would use.

#include "demo/diary.h"
#include "demo/nursery.h"

namespace coneline::demo {

/// The day on which the demonstration stands.
Date as_of();

/// Lets everything happen up to the day it stands.
void live_through(store::Book& book, const Nursery& nursery);

} // namespace coneline::demo
