// SPDX-License-Identifier: GPL-3.0-or-later
// The functions of the library that reads when a picture was taken, each handed on to it, which is
// loaded with the first picture.
#include "core/base/on_demand.h"

#include <libexif/exif-data.h>

extern "C" {
ExifData* exif_data_new_from_file(const char* path) {
  return CONELINE_LOADED(exif_data_new_from_file)(path);
}
void exif_data_unref(ExifData* data) {
  CONELINE_LOADED(exif_data_unref)(data);
}
ExifEntry* exif_content_get_entry(ExifContent* content, ExifTag tag) {
  return CONELINE_LOADED(exif_content_get_entry)(content, tag);
}
}
