// SPDX-License-Identifier: GPL-3.0-or-later
// The functions of the library that reads and writes calendars, each handed on to it, which is
// loaded with the first calendar.
#include "core/base/on_demand.h"

#include <libical/ical.h>

extern "C" {
void icalcomponent_add_component(icalcomponent* parent, icalcomponent* child) {
  CONELINE_LOADED(icalcomponent_add_component)(parent, child);
}
void icalcomponent_add_property(icalcomponent* component, icalproperty* property) {
  CONELINE_LOADED(icalcomponent_add_property)(component, property);
}
char* icalcomponent_as_ical_string_r(icalcomponent* component) {
  return CONELINE_LOADED(icalcomponent_as_ical_string_r)(component);
}
void icalcomponent_free(icalcomponent* component) {
  CONELINE_LOADED(icalcomponent_free)(component);
}
icaltimetype icalcomponent_get_dtend(icalcomponent* component) {
  return CONELINE_LOADED(icalcomponent_get_dtend)(component);
}
icaltimetype icalcomponent_get_dtstart(icalcomponent* component) {
  return CONELINE_LOADED(icalcomponent_get_dtstart)(component);
}
icaltimetype icalcomponent_get_due(icalcomponent* component) {
  return CONELINE_LOADED(icalcomponent_get_due)(component);
}
icalcomponent* icalcomponent_get_first_component(icalcomponent* component,
                                                 icalcomponent_kind kind) {
  return CONELINE_LOADED(icalcomponent_get_first_component)(component, kind);
}
icalproperty* icalcomponent_get_first_property(icalcomponent* component, icalproperty_kind kind) {
  return CONELINE_LOADED(icalcomponent_get_first_property)(component, kind);
}
icalcomponent* icalcomponent_get_next_component(icalcomponent* component, icalcomponent_kind kind) {
  return CONELINE_LOADED(icalcomponent_get_next_component)(component, kind);
}
int icalcomponent_get_sequence(icalcomponent* component) {
  return CONELINE_LOADED(icalcomponent_get_sequence)(component);
}
icalproperty_status icalcomponent_get_status(icalcomponent* component) {
  return CONELINE_LOADED(icalcomponent_get_status)(component);
}
const char* icalcomponent_get_uid(icalcomponent* component) {
  return CONELINE_LOADED(icalcomponent_get_uid)(component);
}
icalcomponent_kind icalcomponent_isa(const icalcomponent* component) {
  return CONELINE_LOADED(icalcomponent_isa)(component);
}
icalcomponent* icalcomponent_new(icalcomponent_kind kind) {
  return CONELINE_LOADED(icalcomponent_new)(kind);
}
icalcomponent* icalcomponent_new_vcalendar() {
  return CONELINE_LOADED(icalcomponent_new_vcalendar)();
}
void icalmemory_free_buffer(void* buffer) {
  CONELINE_LOADED(icalmemory_free_buffer)(buffer);
}
icalcomponent* icalparser_parse_string(const char* text) {
  return CONELINE_LOADED(icalparser_parse_string)(text);
}
icaltimetype icalproperty_get_completed(const icalproperty* property) {
  return CONELINE_LOADED(icalproperty_get_completed)(property);
}
icalproperty* icalproperty_new_categories(const char* value) {
  return CONELINE_LOADED(icalproperty_new_categories)(value);
}
icalproperty* icalproperty_new_completed(icaltimetype value) {
  return CONELINE_LOADED(icalproperty_new_completed)(value);
}
icalproperty* icalproperty_new_description(const char* value) {
  return CONELINE_LOADED(icalproperty_new_description)(value);
}
icalproperty* icalproperty_new_dtend(icaltimetype value) {
  return CONELINE_LOADED(icalproperty_new_dtend)(value);
}
icalproperty* icalproperty_new_dtstamp(icaltimetype value) {
  return CONELINE_LOADED(icalproperty_new_dtstamp)(value);
}
icalproperty* icalproperty_new_dtstart(icaltimetype value) {
  return CONELINE_LOADED(icalproperty_new_dtstart)(value);
}
icalproperty* icalproperty_new_due(icaltimetype value) {
  return CONELINE_LOADED(icalproperty_new_due)(value);
}
icalproperty* icalproperty_new_prodid(const char* value) {
  return CONELINE_LOADED(icalproperty_new_prodid)(value);
}
icalproperty* icalproperty_new_sequence(int value) {
  return CONELINE_LOADED(icalproperty_new_sequence)(value);
}
icalproperty* icalproperty_new_status(icalproperty_status value) {
  return CONELINE_LOADED(icalproperty_new_status)(value);
}
icalproperty* icalproperty_new_summary(const char* value) {
  return CONELINE_LOADED(icalproperty_new_summary)(value);
}
icalproperty* icalproperty_new_transp(icalproperty_transp value) {
  return CONELINE_LOADED(icalproperty_new_transp)(value);
}
icalproperty* icalproperty_new_uid(const char* value) {
  return CONELINE_LOADED(icalproperty_new_uid)(value);
}
icalproperty* icalproperty_new_version(const char* value) {
  return CONELINE_LOADED(icalproperty_new_version)(value);
}
icaltimetype icaltime_from_string(const char* text) {
  return CONELINE_LOADED(icaltime_from_string)(text);
}
int icaltime_is_null_time(icaltimetype time) {
  return CONELINE_LOADED(icaltime_is_null_time)(time);
}
icaltimetype icaltime_null_date() {
  return CONELINE_LOADED(icaltime_null_date)();
}
icaltimezone* icaltimezone_get_utc_timezone() {
  return CONELINE_LOADED(icaltimezone_get_utc_timezone)();
}
}
