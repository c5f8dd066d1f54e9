// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/devices/devices.h"

#include "core/base/on_demand.h"

#include <stdexcept>

namespace coneline::window {

namespace {

class NoDevices : public Devices {
 public:
  std::unique_ptr<Camera> camera(HeardOfCamera /*heard*/) override { return nullptr; }
  bool plays_sounds() override { return false; }
  std::unique_ptr<Sound> sound(const QString& /*name*/) override { return nullptr; }
  QStringList printers() override { return {}; }
  std::unique_ptr<QPagedPaintDevice> printer(const QString& /*name*/) override { return nullptr; }
};

Devices& found() {
  using Of = Devices& (*)();
  try {
    return reinterpret_cast<Of>(loaded("libconeline-devices.so", "coneline_devices"))();
  } catch (const std::runtime_error&) {
    static NoDevices none;
    return none;
  }
}

} // namespace

Devices& devices() {
  static auto& all = found();
  return all;
}

} // namespace coneline::window
