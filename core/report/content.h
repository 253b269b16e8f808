#pragma once
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/record/shop_floor.h"
#include "core/record/verify.h"
#include "core/report/drawing.h"
#include "core/report/exceptions.h"
#include "core/report/wording.h"

namespace cw {

/// Somebody the record names, and what they did in it.
struct PersonLine {
  std::string name, sign;
  std::vector<std::string> roles;  ///< in the shop
  std::vector<std::string> part;   ///< in this job: "did the work", "second person" …
};

/// A tool as it was when it was used: the crib's page of that moment.
struct ToolLine {
  TorqueTool tool;
  std::vector<std::string> settings;  ///< each once, as stated
  std::vector<int> entries;           ///< where it was set
  std::string standing;               ///< in date on the day, or why it was refused and who allowed it
};

struct PartLine {
  std::string name;
  int count = 0;
  std::string used;  ///< what the entries say of it; empty if they say nothing
  int entry = 0;     ///< 0: none
};

/// One tightening of one position, or what a correction made of it.
struct TighteningLine {
  std::string position;
  int order = 0;  ///< place in the tightening order, from 1
  int pass = 0;
  StatedTorque low, target, high;  ///< in force at the time
  StatedTorque setting;
  Known known = Known::Clicked;
  std::optional<StatedTorque> reading;
  bool within = true;
  std::string tool, person;
  Moment time;
  std::optional<Moment> done;  ///< earlier than `time`: a late entry
  int entry = 0;
  std::string hash;
  std::optional<int> corrects, correctedBy;
  bool overtaken = false;

  bool holds() const { return !correctedBy && !overtaken; }
};

/// A tighten step and its joint.
struct JointContent {
  int step = 0;  ///< number on the sheet
  std::string name;
  std::string fastener, condition;  ///< condition empty: the source does not say
  std::string printed, source;      ///< the specifications word for word, and where they stand
  std::string interpretation;       ///< what was made of it, by whom and why
  JobTorque torque;                 ///< that holds at the first position of the order
  bool differs = false;             ///< other positions have another one
  bool toleranceStated = false;
  bool forThisJobOnly = false;  ///< a deviation gave the torque
  std::size_t positions = 0, done = 0;
  std::vector<std::string> course;  ///< hand start, counted passes, check rounds, second person
  std::vector<TighteningLine> lines;
  JointDrawing drawing;
};

struct EntryLine {
  int sequence = 0;
  Moment time;
  std::optional<Moment> done;
  std::string who;  ///< doers, who entered it if somebody else, supervisor
  int step = 0;     ///< number on the sheet; 0: none
  std::string what;
  bool overtaken = false;
  std::optional<int> corrects, correctedBy;
  std::string hash;

  bool holds() const { return !correctedBy && !overtaken; }
};

struct AddendumLine {
  int number = 0;
  std::string name;
  Moment time;
  std::string text;
};

/// Everything that a document about one job shows. Facts are typed; sentences are in the wording that the
/// content was made with.
struct RecordContent {
  bool sealed = false, finished = false;
  bool trial = false;  ///< sealed by a trial version: its rules are not checked
  std::string shopName, workOrder, machine, model, serial, hours;
  std::string reason;
  bool quick = false;  ///< a quick joint: no issued sheet
  std::string sheetTitle, sheetRevision, sheetId, sheetDigest, notice;
  std::vector<std::string> sources;
  std::string outcome;   ///< the headline
  std::string sealedBy;  ///< who sealed, and how they vouched for it; empty: nobody says
  std::optional<Moment> started, ended, sealedAt;
  std::vector<ExceptionGroup> exceptions;  ///< gravest first
  std::vector<PersonLine> people;
  std::vector<ToolLine> tools;
  std::vector<PartLine> parts;
  std::vector<JointContent> joints;
  std::vector<EntryLine> entries;
  std::vector<AddendumLine> addenda;
  std::string jobId, head, keyId, program;  ///< keyId empty: not sealed
};

/// A sealed record with its addenda.
RecordContent contentOf(const SealedRecord& record, std::span<const Addendum> addenda,
                        const Wording& wording);

/// A job that is not sealed, as it stands, marked so.
RecordContent contentOf(const Job& job, const ShopFloor& floor, const std::string& shopName,
                        const Wording& wording);

}  // namespace cw
