#include <QCoreApplication>

#include "app/common/wording.h"
#include "app/library/both_units.h"
#include "app/library/row_facts.h"
#include "core/fastener/catalogue.h"
#include "core/fastener/profile.h"

namespace cw {
namespace {

struct ThreadText {
  Q_DECLARE_TR_FUNCTIONS(ThreadFacts)
};

const LengthUnit& ownUnit(ThreadSystem system) {
  return system == ThreadSystem::Metric ? kMillimetre : kInch;
}

std::string unitHeading(const QString& what, ThreadSystem system) {
  return fromQt(what) + ", " + std::string(ownUnit(system).symbol);
}

std::string inOwnUnit(const std::optional<Length>& value, ThreadSystem system) {
  return value ? significant(in(ownUnit(system), *value), 6) : "–";
}

std::string pitchText(const Thread& thread) {
  if (thread.system == ThreadSystem::Metric) return inBoth(thread.pitch, thread.system);
  return fromQt(
      ThreadText::tr("%1 threads per inch (%2)")
          .arg(toQt(significant(inches(1) / thread.pitch, 6)), toQt(text(thread.pitch, kMillimetre, 4))));
}

std::string limitsText(const std::optional<Limits>& limits, ThreadSystem system) {
  if (!limits) return "–";
  return inOwnUnit(limits->least, system) + " … " + inOwnUnit(limits->most, system);
}

Table limitsTable(ThreadSystem system) {
  return {{{fromQt(ThreadText::tr("Class")), 10},
           {unitHeading(ThreadText::tr("Major diameter"), system), 30, true},
           {unitHeading(ThreadText::tr("Pitch diameter"), system), 30, true},
           {unitHeading(ThreadText::tr("Minor diameter"), system), 30, true}},
          {}};
}

std::vector<Cell> limitsCells(const SizeLimits& limits, ThreadSystem system) {
  return {{limits.toleranceClass},
          {limitsText(limits.major, system)},
          {limitsText(limits.pitch, system)},
          {limitsText(limits.minor, system)}};
}

void addLimitsOf(const Catalogue& catalogue, const Thread& thread, std::vector<Section>& out) {
  Table table = limitsTable(thread.system);
  for (const SizeLimits& limits : catalogue.rows().limits)
    if (limits.thread == thread.designation) table.rows.push_back(limitsCells(limits, thread.system));
  if (!table.rows.empty())
    out.push_back({fromQt(ThreadText::tr("Limits of size")), {std::move(table)}, false});
}

/// Heads, nuts and washers of that size, and the hole under them.
void addFacesOf(const Catalogue& catalogue, const Thread& thread, std::vector<Section>& out) {
  Table table{{{fromQt(ThreadText::tr("Turns on the part")), 40},
               {unitHeading(ThreadText::tr("Across flats"), thread.system), 30, true},
               {unitHeading(ThreadText::tr("Bearing diameter"), thread.system), 30, true}},
              {}};
  for (const Head& head : catalogue.rows().heads)
    if (head.system == thread.system && head.diameter == thread.diameter)
      table.rows.push_back(
          {{head.kind}, {inOwnUnit(head.acrossFlats, head.system)}, {inOwnUnit(head.bearing, head.system)}});
  if (!table.rows.empty())
    out.push_back({fromQt(ThreadText::tr("Bearing faces of this size")), {std::move(table)}, false});
}

Facts holeFacts(const ClearanceHole& hole) {
  Facts facts;
  if (hole.close)
    facts.rows.push_back({fromQt(ThreadText::tr("Close fit")), inBoth(*hole.close, hole.system)});
  facts.rows.push_back({fromQt(ThreadText::tr("Normal fit")), inBoth(hole.normal, hole.system)});
  if (hole.loose)
    facts.rows.push_back({fromQt(ThreadText::tr("Loose fit")), inBoth(*hole.loose, hole.system)});
  return facts;
}

}  // namespace

std::vector<Section> sectionsOf(const Catalogue& catalogue, const Thread& thread) {
  const ThreadSystem system = thread.system;
  Facts facts;
  facts.rows = {
      {fromQt(ThreadText::tr("Diameter d")), inBoth(thread.diameter, system)},
      {fromQt(ThreadText::tr("Pitch P")), pitchText(thread)},
      {fromQt(ThreadText::tr("Pitch diameter d2")), inBoth(thread.pitchDiameter, system)},
      {fromQt(ThreadText::tr("Minor diameter of the nut D1")), inBoth(thread.minorDiameter, system)},
      {fromQt(ThreadText::tr("Root diameter of the bolt d3")), inBoth(thread.rootDiameter, system)},
      {fromQt(ThreadText::tr("Stress area As")), inBoth(thread.stressArea, system)},
      {fromQt(ThreadText::tr("Stress area by")), stressAreaSource(thread)},
      {fromQt(ThreadText::tr("Left hand")),
       fromQt(ThreadText::tr("same sizes, written %1-LH").arg(toQt(thread.designation)))}};
  std::vector<Section> out = {{"", {std::move(facts)}, false}};
  if (const auto hole = catalogue.clearanceHole(thread))
    out.push_back({fromQt(ThreadText::tr("Clearance hole")), {holeFacts(*hole)}, false});
  addFacesOf(catalogue, thread, out);
  addLimitsOf(catalogue, thread, out);
  return out;
}

std::vector<Section> sectionsOf(const Catalogue&, const Head& head) {
  Facts facts;
  facts.rows = {{fromQt(ThreadText::tr("For bolts of diameter")), inBoth(head.diameter, head.system)}};
  if (head.acrossFlats)
    facts.rows.push_back({fromQt(ThreadText::tr("Across flats")), inBoth(*head.acrossFlats, head.system)});
  facts.rows.push_back(
      {fromQt(ThreadText::tr("Outer diameter of the face that turns")), inBoth(head.bearing, head.system)});
  return {{"", {std::move(facts)}, false}};
}

std::vector<Section> sectionsOf(const Catalogue&, const ClearanceHole& hole) {
  Facts facts = holeFacts(hole);
  facts.rows.insert(facts.rows.begin(),
                    {fromQt(ThreadText::tr("For bolts of diameter")), inBoth(hole.diameter, hole.system)});
  return {{"", {std::move(facts)}, false}};
}

std::vector<Section> sectionsOf(const Catalogue& catalogue, const SizeLimits& limits) {
  const auto thread = catalogue.thread(limits.thread);
  const ThreadSystem system = thread ? thread->system : ThreadSystem::Metric;
  Table table = limitsTable(system);
  table.rows.push_back(limitsCells(limits, system));
  return {
      {"",
       {Paragraph{fromQt(ThreadText::tr("Smallest and largest permitted size of %1. Classes written small "
                                        "or ending in A are the bolt's, the others the hole's.")
                             .arg(toQt(limits.thread)))},
        std::move(table)},
       false}};
}

}  // namespace cw
