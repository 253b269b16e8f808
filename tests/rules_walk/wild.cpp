#include "core/record/next.h"
#include "tests/rules_walk/moves.h"

namespace cw::test {
namespace {

/// Fills the fields of a body of any kind with what somebody could type, mostly names that are there.
class Scribbler {
 public:
  Scribbler(const Job& job, const Floor& floor, Dice& dice) : m_job(job), m_floor(floor), m_dice(dice) {}

  std::string person() {
    if (m_dice.inHundred(4)) return m_dice.of(std::vector<std::string>{"", "nobody", "Mira", "mira "});
    return m_floor.people[m_dice.below(m_floor.people.size())].sign;
  }
  std::string tool() {
    if (m_dice.inHundred(6)) return m_dice.of(std::vector<std::string>{"", "T-99", "t-07", " T-07"});
    return m_floor.tools[m_dice.below(m_floor.tools.size())].id;
  }
  std::string step() {
    const std::size_t now = next(m_job).step;
    if (m_dice.inHundred(60) && now < m_job.steps.size()) return m_job.sheet.steps[now].id;
    if (m_dice.inHundred(5)) return m_dice.of(std::vector<std::string>{"", "s99", "S1"});
    return m_job.sheet.steps[m_dice.below(m_job.steps.size())].id;
  }
  std::string position() {
    const Next now = next(m_job);
    if (m_dice.inHundred(50) && !now.position.empty()) return now.position;
    if (m_dice.inHundred(10)) return "";
    return std::to_string(m_dice.between(0, 7));
  }
  std::string text() {
    switch (m_dice.below(12)) {
      case 0:
        return "";
      case 1:
        return "  \t";
      case 2:
        return std::string(5000, 'x');
      case 3:
        return "„schön“ \u0001 ½";
      case 4:
        return "2026-02-30";
      case 5:
        return "2026-03-03";
      case 6:
        return "2098-12-31";
      case 7:
        return "0.05";
      case 8:
        return "9e99";
      case 9:
        return m_job.sheet.id.text();
      default:
        return "so";
    }
  }
  StatedTorque torque() {
    static const std::vector<StatedTorque> kPool{
        {"60", &kPoundInch},      {"65", &kPoundInch},   {"65.0", &kPoundInch}, {"70", &kPoundInch},
        {"70.0001", &kPoundInch}, {"32.5", &kPoundInch}, {"10", &kNewtonMetre}, {"9.0", &kNewtonMetre},
        {"88.5", &kPoundInch},    {"7.34", &kPoundFoot}, {"65", &kNewtonMetre}, {"65", &kPoundFoot},
        {"780", &kPoundInch},     {"10", &kPoundFoot},   {"90", &kPoundInch},   {"90.1", &kPoundInch},
        {"5.4", &kPoundInch},     {"0", &kPoundInch},    {"-5", &kNewtonMetre}, {"1000000", &kNewtonMetre},
        {"9.04", &kNewtonMetre},  {"40", &kPoundInch},   {"21", &kNewtonMetre}, {"21", &kPoundInch},
        {"56.44", &kNewtonMetre}, {"11", &kNewtonMetre}, {"13", &kPoundInch},   {"19", &kNewtonMetre}};
    return m_dice.of(kPool);
  }

  // One overload for each type of field.
  void operator()(std::string_view, PersonSign& out) { out = m_dice.inHundred(50) ? "" : person(); }
  void operator()(std::string_view, ToolId& out) { out = tool(); }
  void operator()(std::string_view, StepId& out) { out = step(); }
  void operator()(std::string_view, PositionLabel& out) { out = position(); }
  void operator()(std::string_view, std::string& out) { out = text(); }
  void operator()(std::string_view, bool& out) { out = m_dice.inHundred(50); }
  void operator()(std::string_view, int& out) {
    out = m_dice.inHundred(30) ? m_dice.between(0, 1'000'000) : m_dice.between(0, 7);
  }
  void operator()(std::string_view, StatedTorque& out) { out = torque(); }
  void operator()(std::string_view, StatedLength& out) {
    out = {m_dice.of(std::vector<std::string>{"2.0", "2.1", "2.9", "0", "150"}), &kMillimetre};
  }
  void operator()(std::string_view, Json& out) { out = Json(Json::Object{}); }
  template <class E>
  requires std::is_enum_v<E>
  void operator()(std::string_view, E& out) {
    out = Words<E>::kAll[m_dice.below(Words<E>::kAll.size())].first;
  }
  template <class T>
  void operator()(std::string_view key, std::optional<T>& out) {
    out.reset();
    if (m_dice.inHundred(50)) (*this)(key, out.emplace());
  }
  template <class T>
  void operator()(std::string_view key, std::vector<T>& out) {
    out.resize(m_dice.inHundred(40) ? 0 : m_dice.below(5));
    for (T& one : out) (*this)(key, one);
  }
  /// Labels, and what a second person looked at.
  void operator()(std::string_view key, std::vector<std::string>& out) {
    out.clear();
    if (m_dice.inHundred(40)) return;
    const bool looks = key == "what" || key == "not_so";
    for (std::size_t i = 0; i < 1 + m_dice.below(3); ++i)
      out.push_back(
          looks ? m_dice.of(std::vector<std::string>{"setting", "marks", "count", "the drain is clear"})
                : position());
  }
  template <class T>
  void operator()(std::string_view, Derived<T>&) {}
  template <class T>
  void operator()(std::string_view, AsAtUse<T>&) {}

  Body body() {
    std::size_t left = m_dice.below(std::variant_size_v<Body>);
    Body out;
    forEachKind([&]<class T>() {
      if (left-- != 0) return;
      T made;
      T::fields(made, *this);
      out = made;
    });
    if (auto* corrected = std::get_if<Corrected>(&out)) fill(*corrected);
    if (auto* confirmed = std::get_if<Confirmed>(&out))
      for (int& of : confirmed->of) of = m_dice.between(0, m_job.count() + 1);
    return out;
  }
  /// Some fields of the entry, with other values, now and then one that a correction may not touch.
  void fill(Corrected& out) {
    out.of = m_dice.inHundred(60) ? aCorrectable() : m_dice.between(0, m_job.count() + 1);
    if (out.of < 1 || out.of > m_job.count()) return;
    Body was = m_job.kept(out.of).body(), other = was;
    std::visit([&]<class T>(T& b) { T::fields(b, *this); }, other);
    const Json old = bodyToJson(was), all = bodyToJson(other);
    Json::Object some;
    for (const auto& [key, value] : *all.object()) {
      const Json* before = old.find(key);
      const bool same = before != nullptr && *before == value;
      if (!same && m_dice.inHundred(key == "step" || key == "position" || key == "allowed_by" ? 10 : 70))
        some.emplace(key, value);
    }
    for (const auto& [key, value] : *old.object())
      if (all.find(key) == nullptr && m_dice.inHundred(30) && value.array() != nullptr)
        some.emplace(key, Json(Json::Array{}));
    if (out.reason.size() > 10 || m_dice.inHundred(60)) out.reason = "misread";
    out.now = Json(std::move(some));
  }

 private:
  int aCorrectable() {
    std::vector<int> out;
    for (const Kept& kept : m_job.entries)
      if (isCorrectable(kept.entry.body)) out.push_back(kept.entry.sequence);
    return out.empty() ? 1 : m_dice.of(out);
  }
  const Job& m_job;
  const Floor& m_floor;
  Dice& m_dice;
};

/// Ends of a job come often enough by themselves.
bool endsIt(const Body& body) {
  return std::holds_alternative<CalledOff>(body) || std::holds_alternative<Finished>(body);
}

void scribbleWho(Move& move, Scribbler& hand, Dice& dice) {
  Draft& draft = move.draft;
  if (dice.inHundred(30)) draft.supervisor = hand.person();
  if (dice.inHundred(25))
    for (std::size_t i = 0; i < dice.below(3) + 1; ++i)
      draft.by.push_back({hand.person(), dice.inHundred(50) ? "" : hand.tool()});
  draft.byPhone = dice.inHundred(20);
  Entry named;
  named.enteredBy = draft.enteredBy, named.supervisor = draft.supervisor;
  named.by = draft.by, named.body = draft.body;
  for (const std::string& sign : namedIn(named).people)
    if (dice.inHundred(45)) move.withPin.insert(sign);
}

}  // namespace

Move wildMove(const Job& job, const Floor& floor, Dice& dice) {
  Scribbler hand(job, floor, dice);
  const std::string sign = hand.person();  // before the body, whatever the compiler would do first
  Move out = moveOf(sign, hand.body());
  if (endsIt(out.draft.body) && dice.inHundred(90)) out.draft.body = hand.body();
  scribbleWho(out, hand, dice);
  return out;
}

Move spoilt(Move move, const Job& job, const Floor& floor, Dice& dice) {
  Scribbler hand(job, floor, dice);
  switch (dice.below(7)) {
    case 0:
      move.draft.enteredBy = hand.person();
      break;
    case 1:
      scribbleWho(move, hand, dice);
      break;
    case 2:
      move.withPin.clear();
      break;
    case 3:
      move.draft.supervisor = hand.person();
      break;
    case 4:
      move.draft.by = {{hand.person(), hand.tool()}};
      break;
    default: {
      Body other = move.draft.body;
      std::visit([&]<class T>(T& b) { T::fields(b, hand); }, other);
      // One field of the other body over the sensible one.
      const Json all = bodyToJson(other);
      Json::Object mixed = *bodyToJson(move.draft.body).object();
      if (!all.object()->empty()) {
        auto from = all.object()->begin();
        std::advance(from, static_cast<long>(dice.below(all.object()->size())));
        mixed.insert_or_assign(from->first, from->second);
      }
      if (auto body = bodyFromJson(kindOf(move.draft.body), Json(mixed), "", From::Chain))
        move.draft.body = *body;
    }
  }
  return move;
}

}  // namespace cw::test
