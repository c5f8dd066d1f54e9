// SPDX-License-Identifier: GPL-3.0-or-later
// The functions of the library that makes digests, each handed on to it, which is loaded with the
// first entry that is made or proven.
#include "core/base/on_demand.h"

#include <nettle/sha2.h>

extern "C" {
void nettle_sha256_init(struct sha256_ctx* hash) {
  CONELINE_LOADED(nettle_sha256_init)(hash);
}
void nettle_sha256_update(struct sha256_ctx* hash, size_t length, const uint8_t* data) {
  CONELINE_LOADED(nettle_sha256_update)(hash, length, data);
}
void nettle_sha256_digest(struct sha256_ctx* hash, size_t length, uint8_t* digest) {
  CONELINE_LOADED(nettle_sha256_digest)(hash, length, digest);
}
}
