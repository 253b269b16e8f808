#pragma once
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/base/id.h"
#include "core/base/json.h"
#include "core/joint/guard.h"
#include "core/pattern/layout.h"
#include "core/pattern/passes.h"
#include "core/procedure/photograph.h"
#include "core/units/stated.h"

namespace cw {

/// Where a value or an instruction was taken from.
struct Source {
  std::string id;  ///< short name used on the sheet: "manual"
  std::string document;
  std::string page;
  std::string revision;
  std::string date;   ///< of that revision, ISO 8601; may be empty
  Json::Object rest;  ///< fields this program does not know; written back as they were
  std::optional<Photograph> photograph{};

  bool operator==(const Source&) const = default;
};

/// A part or a consumable that the job uses.
struct Part {
  std::string id;
  std::string name;
  int count = 1;
  bool singleUse = false;    ///< a new one each time; the bench asks for it
  bool batchWanted = false;  ///< batch and expiry are recorded when it is used
  Json::Object rest;

  bool operator==(const Part&) const = default;
};

enum class FastenerKind { Bolt, Screw, Stud, Nut };

/// What sits at a position.
struct Fastener {
  std::string id;
  FastenerKind kind = FastenerKind::Bolt;
  std::string thread;  ///< catalogue designation; "-LH" marks a left-hand thread
  std::string grade;   ///< catalogue name; empty if unmarked
  std::optional<StatedLength> length;
  std::string tapped;  ///< material it is screwed into; empty for a nut
  std::optional<StatedLength> engagement;
  std::optional<StatedLength> grip;  ///< what it clamps, washers included: under the head to the hole's mouth
  std::optional<StatedLength> depth;     ///< full thread of the hole it is screwed into
  std::optional<Ungrounded> ungrounded;  ///< why its torque is not judged by what it could bear
  Json::Object rest;

  bool operator==(const Fastener&) const = default;
};

enum class Reading { Value, Range, Maximum, Words };  ///< how the printed text was read

/// How the torque is brought about.
enum class Method { TorqueOnly, TorqueAndAngle };

/// What the source prints, word for word, beside what was made of it, by whom and why.
struct Specification {
  std::string id;
  std::string printed;        ///< first printed column, to the letter: "60-70 in. lbs."
  std::string printedSecond;  ///< the same value in the manual's other column; may be empty
  std::string source;         ///< id of a Source
  Reading reading = Reading::Value;
  std::optional<StatedTorque> low;   ///< least acceptable
  std::optional<StatedTorque> high;  ///< most acceptable
  std::optional<StatedTorque> aim;   ///< what the wrench is to apply; within [low, high]
  bool toleranceStated = false;      ///< false: low and high are the author's, by a rule named in `why`
  std::string condition;             ///< catalogue condition name; empty means the source does not say
  Method method = Method::TorqueOnly;
  std::optional<StatedAngle> angle;  ///< for TorqueAndAngle, after the aim is reached
  std::string interpretedBy;
  std::string why;
  Json::Object rest;

  bool operator==(const Specification&) const = default;
};

/// What differs at one position of a joint.
struct PositionDetail {
  std::string fastener;       ///< id of a Fastener; empty: the joint's
  std::string specification;  ///< id of a Specification; empty: the joint's
  Json::Object rest;

  bool operator==(const PositionDetail&) const = default;
};

/// What follows if a joint lets go.
enum class IfItLetsGo { Nuisance, Leak, Damage, Injury };

/// Fasteners at positions, what holds for them, and the way they are tightened.
struct Joint {
  std::string id;
  std::string name;
  Layout layout;
  std::string fastener;
  std::string specification;
  std::map<std::string, PositionDetail> positions;  ///< by label; only those that differ
  std::string rule;                ///< name of the order's rule; empty if `order` was made by hand
  std::vector<std::string> order;  ///< labels in tightening order
  PassPlan passes;
  std::vector<NoSecondTurn> noSecondTurn;  ///< why nothing may be turned again once it has its value
  IfItLetsGo ifItLetsGo = IfItLetsGo::Leak;
  Json::Object layoutRest;  ///< as `rest`, of the layout and of the passes
  Json::Object passesRest;
  Json::Object rest;

  const std::string& fastenerAt(const std::string& label) const;
  const std::string& specificationAt(const std::string& label) const;

  bool operator==(const Joint&) const = default;
};

enum class StepKind { Act, Check, Measure, Apply, Tighten, Hold };

/// What a second person looks at, and how.
enum class Witness { Watched, Independent };
struct HoldDemand {
  Witness witness = Witness::Watched;
  std::vector<std::string> what;  ///< of "setting", "marks", "count", or words of the author's
  Json::Object rest;

  bool operator==(const HoldDemand&) const = default;
};

/// One thing to do.
struct Step {
  std::string id;  ///< stable within the sheet: "s4"
  StepKind kind = StepKind::Act;
  std::string text;                                    ///< the instruction
  std::vector<std::string> warnings, cautions, notes;  ///< stand before the instruction
  std::string joint;                                   ///< Tighten: id of a Joint
  std::string part;                                    ///< Apply: id of a Part; Act: the part it fits, if any
  std::string unit;                                    ///< Measure: unit code, of any kind
  std::string low, high;           ///< Measure: limits in that unit, digits; empty for none
  std::optional<HoldDemand> hold;  ///< Hold: itself; Tighten: before its final pass
  Json::Object rest;

  bool operator==(const Step&) const = default;
};

/// Machines by serial number, both ends included, as on their plates: "100" to "480", "PS40-0100" to
/// "PS40-0480". An end that is empty is open.
struct SerialRange {
  std::string from, to;

  bool operator==(const SerialRange&) const = default;
};

/// One revision of a procedure sheet, as its file says it.
struct Sheet {
  Id id;  ///< the same for all its revisions
  std::string title;
  std::string revision;                   ///< "A", "B", … or as the shop counts
  std::string model;                      ///< what it applies to, as on the machine's plate
  std::string serials;                    ///< in words: "all", "100 to 480"
  std::vector<SerialRange> serialRanges;  ///< the same as data; without, the words are read where they can be
  std::string notice;                     ///< stands on every page: "Invented data, not for use."
  std::string author;                     ///< sign of a person
  std::vector<Source> sources;
  std::vector<Part> parts;
  std::vector<Fastener> fasteners;
  std::vector<Specification> specifications;
  std::vector<Joint> joints;
  std::vector<Step> steps;
  Json::Object rest;

  const Step* step(std::string_view stepId) const;
  const Joint* joint(std::string_view jointId) const;
  const Part* part(std::string_view partId) const;
  const Fastener* fastener(std::string_view fastenerId) const;
  const Specification* specification(std::string_view specificationId) const;
  const Source* source(std::string_view sourceId) const;

  bool operator==(const Sheet&) const = default;
};

}  // namespace cw
