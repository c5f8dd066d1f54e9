// SPDX-License-Identifier: GPL-3.0-or-later
// Prints the counts of the large book as `coneline germination` reads them: large_counts [TRAYS]
#include "tests/benchmark/large_book.h"

#include <cstdio>
#include <cstdlib>

int main(int count, char** arguments) {
  std::puts("group,tray,sown,day,germinated");
  for (const auto& tray : coneline::tests::large_counts(count > 1 ? std::atoi(arguments[1]) : 2000))
    for (const auto& look : tray.looks)
      std::printf("%s,%s,%lld,%g,%lld\n", tray.group.c_str(), tray.tray.c_str(),
                  static_cast<long long>(tray.sown), look.day,
                  static_cast<long long>(look.germinated));
  return 0;
}
