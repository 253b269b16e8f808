#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/joint/guard.h"
#include "core/report/band_drawing.h"
#include "core/report/document.h"
#include "core/report/wording.h"
#include "core/units/stated.h"

namespace cw {

/// A torque that may be carried on to a wrench, and the condition it is for.
struct CarriedTorque {
  StatedTorque torque;
  std::string condition;    ///< catalogue name; empty if not stated
  std::string insteadOf{};  ///< what is specified, where this deviates from it: "30 N·m for “dry”"
};

/// One thing that a computation comes to.
struct FigureAnswer {
  Message lead;                      ///< what the number is
  std::string number;                ///< with its unit
  Message word;                      ///< stands in the number's place where the answer is a word
  std::string inWords;               ///< "15 foot-pounds", where a wrench is set
  std::vector<std::string> derived;  ///< the same in the shop's other units
  std::vector<std::string> further;  ///< and in units that are rarely met
  std::vector<Message> sentences;
  std::vector<Message> cautions;
  std::optional<BandDrawing> band;
  std::optional<CarriedTorque> carried;
};

/// What a computation of Figures comes to, without a look. The first answer is the one to follow.
struct Outcome {
  std::vector<FigureAnswer> answers;
  Working working;
};

/// N·m, ft·lbf and in·lbf, save the unit that the torque is stated in.
std::vector<std::string> inOtherShopUnits(Torque torque, const TorqueUnit& stated);

/// A number with both of its shop units behind it; lead, number and derived are filled.
FigureAnswer torqueAnswer(Message lead, const StatedTorque& torque);

/// The same for a computed torque, shown in `unit` to four digits.
FigureAnswer torqueAnswer(Message lead, Torque torque, const TorqueUnit& unit);

/// The word that follows a torque: what the guard says of it. Nothing where the fastener is not known enough
/// to say anything.
struct GuardRemark {
  bool trouble = false;  ///< outside its band, or right only where friction is high
  std::vector<Message> sentences;
};
GuardRemark guardRemark(const Judgement& judgement);

/// The working as a document: formula, what was given and by whom, the steps, where it holds.
Document workingDocument(const Working& working, const Wording& wording);

}  // namespace cw
