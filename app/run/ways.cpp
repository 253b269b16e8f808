#include "app/run/ways.h"

#include <QCoreApplication>

namespace cw {
namespace {

struct WayWords {
  const char *key, *name, *explanation;
  std::set<Asks> asks;
};

const std::vector<WayWords>& words() {
  static const std::vector<WayWords> kWords{
      {"aside",
       QT_TRANSLATE_NOOP("cw::WaysOut", "Leave this step for later"),
       QT_TRANSLATE_NOOP("cw::WaysOut", "It stays open; you come back to it before the job ends."),
       {Asks::Reason}},
      {"correction",
       QT_TRANSLATE_NOOP("cw::WaysOut", "Correct an entry"),
       QT_TRANSLATE_NOOP("cw::WaysOut",
                         "Change what was wrong. Both stay on the record, the old one struck through."),
       {Asks::Entry, Asks::Reason}},
      {"not-tightened",
       QT_TRANSLATE_NOOP("cw::WaysOut", "Not tightened after all"),
       QT_TRANSLATE_NOOP("cw::WaysOut", "A position that was signed and never pulled is to be done again."),
       {Asks::Pulled, Asks::Reason}},
      {"not-done",
       QT_TRANSLATE_NOOP("cw::WaysOut", "Not done after all"),
       QT_TRANSLATE_NOOP("cw::WaysOut", "A step that was signed and not done is opened again."),
       {Asks::Closed, Asks::Reason}},
      {"take-apart",
       QT_TRANSLATE_NOOP("cw::WaysOut", "Go back to a step"),
       QT_TRANSLATE_NOOP("cw::WaysOut",
                         "Everything from that step on is taken apart and done again; single-use parts are "
                         "asked for anew."),
       {Asks::Step, Asks::Reason}},
      {"deviation",
       QT_TRANSLATE_NOOP("cw::WaysOut", "Done in another way"),
       QT_TRANSLATE_NOOP("cw::WaysOut", "A shop lead must have allowed it. The step closes as a deviation."),
       {Asks::What, Asks::Reason}},
      {"not-applicable",
       QT_TRANSLATE_NOOP("cw::WaysOut", "This step does not apply"),
       QT_TRANSLATE_NOOP("cw::WaysOut", "It closes with nothing written against it, and your reason."),
       {Asks::Reason}},
      {"not-recorded",
       QT_TRANSLATE_NOOP("cw::WaysOut", "Done, but not recorded"),
       QT_TRANSLATE_NOOP("cw::WaysOut",
                         "It closes as not recorded, with your reason, and stands first on the record."),
       {Asks::Reason}},
      {"repair",
       QT_TRANSLATE_NOOP("cw::WaysOut", "A position was repaired"),
       QT_TRANSLATE_NOOP("cw::WaysOut",
                         "An insert, another fastener, a stud that turned with its nut: what was done, and "
                         "where. A shop lead must have allowed it."),
       {Asks::Position, Asks::What, Asks::Reason}},
      {"confirm",
       QT_TRANSLATE_NOOP("cw::WaysOut", "Confirm words given by phone"),
       QT_TRANSLATE_NOOP("cw::WaysOut",
                         "A shop lead stands by what others wrote down for them; all of it at once."),
       {Asks::Words}},
      {"park",
       QT_TRANSLATE_NOOP("cw::WaysOut", "Lay the job up for days"),
       QT_TRANSLATE_NOOP(
           "cw::WaysOut",
           "Write what it waits for. On resuming, a joint that is half tightened starts again."),
       {Asks::WaitsFor, Asks::Machine, Asks::Reason}},
      {"call-off",
       QT_TRANSLATE_NOOP("cw::WaysOut", "Call the job off"),
       QT_TRANSLATE_NOOP(
           "cw::WaysOut",
           "Begun by mistake, or given up. It takes no more entries, is never sealed, and stays in "
           "Records as called off."),
       {Asks::Reason}},
  };
  return kWords;
}

}  // namespace

const std::vector<Way>& waysOut() {
  static const std::vector<Way> kWays = [] {
    std::vector<Way> out;
    const auto tr = [](const char* text) { return QCoreApplication::translate("cw::WaysOut", text); };
    for (const WayWords& each : words())
      out.push_back({QLatin1String(each.key), tr(each.name), tr(each.explanation), each.asks});
    return out;
  }();
  return kWays;
}

}  // namespace cw
