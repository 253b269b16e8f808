#include "core/settling/settling_springs.h"

#include <Eigen/Dense>
#include <cmath>
#include <limits>
#include <string>

namespace cw {
namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

constexpr double kLiftedRemains = 1e-7;

enum class Contact { Off, Slack, Taut, Pressed, Eased, Lifted };

/// A bolt (Off, Slack, Taut) or a gasket cell (Pressed, Eased, Lifted).
struct Spring {
  Contact contact = Contact::Off;
  double loading = 0;
  double unloading = 0;
  bool oneWay = false;
  double reference = 0;  ///< stiffness already inside the starting flexibility
  double seat = 0;       ///< a bolt's nut position; a cell's largest compression so far
};

double stiffnessIn(const Spring& spring, Contact contact) {
  switch (contact) {
    case Contact::Taut:
    case Contact::Pressed:
      return spring.loading;
    case Contact::Eased:
      return spring.unloading;
    case Contact::Lifted:
      return kLiftedRemains * spring.loading;
    default:
      return 0;
  }
}

/// Compression at which a cell that is let go carries nothing.
double liftPoint(const Spring& cell) {
  return cell.seat * (1 - cell.loading / cell.unloading);
}

struct Event {
  double share = 1;  ///< of the move that is still to be made
  Index spring = -1;
  Contact next = Contact::Off;
};

constexpr double kNever = std::numeric_limits<double>::infinity();

/// Where on the way along `speed` a spring at `position` changes its contact, and into what.
Event nextEvent(const Spring& spring, double position, double speed) {
  const auto reach = [&](double goal) { return std::max(0.0, (goal - position) / speed); };
  switch (spring.contact) {
    case Contact::Slack:
      return {speed < 0 ? reach(spring.seat) : kNever, -1, Contact::Taut};
    case Contact::Taut:
      return {spring.oneWay && speed > 0 ? reach(spring.seat) : kNever, -1, Contact::Slack};
    case Contact::Pressed:
      return {speed < 0 ? 0 : kNever, -1, Contact::Eased};
    case Contact::Eased:
      if (speed > 0) return {reach(spring.seat), -1, Contact::Pressed};
      return {spring.oneWay ? reach(liftPoint(spring)) : kNever, -1, Contact::Lifted};
    case Contact::Lifted:
      return {speed > 0 ? reach(liftPoint(spring)) : kNever, -1, Contact::Eased};
    case Contact::Off:
      break;
  }
  return {kNever, -1, Contact::Off};
}

}  // namespace

class SettlingSprings::State {
 public:
  explicit State(const SettlingModel& model)
      : m_bolts(static_cast<Index>(model.bolts.size())),
        m_flexibility(Eigen::Map<const MatrixXd>(model.flexibility.data(), model.flexibility.size(),
                                                 model.flexibility.size())),
        m_position(VectorXd::Zero(model.flexibility.size())) {
    for (const Stiffness bolt : model.bolts) {
      Spring spring;
      spring.loading = bolt.si();
      spring.oneWay = model.boltsGoSlack;
      m_springs.push_back(spring);
    }
    for (const GasketCell& cell : model.cells) {
      const double loading = cell.loading.si();
      m_springs.push_back({Contact::Pressed, loading, cell.unloading.si(), cell.liftsOff, loading, 0});
    }
  }

  Spring& spring(Index i) { return m_springs[static_cast<std::size_t>(i)]; }
  const Spring& spring(Index i) const { return m_springs[static_cast<std::size_t>(i)]; }
  Index bolts() const { return m_bolts; }
  Index size() const { return m_position.size(); }
  double position(Index i) const { return m_position[i]; }

  double load(Index bolt) const {
    const Spring& s = spring(bolt);
    return s.contact == Contact::Taut ? s.loading * (s.seat - m_position[bolt]) : 0;
  }

  /// Changes one spring: a rank-one change of the flexibility.
  void setContact(Index i, Contact contact) {
    Spring& s = spring(i);
    const double change = stiffnessIn(s, contact) - stiffnessIn(s, s.contact);
    s.contact = contact;
    if (change == 0) return;
    const VectorXd moved = column(i);
    m_flexibility.selfadjointView<Eigen::Lower>().rankUpdate(moved, -change / (1 + change * moved[i]));
  }

  /// Moves the body from event to event. `direction` gives the movement that the whole change would make
  /// and is asked again after every event; the `driven` bolt, if any, is held to its load by the wrench.
  template <class Direction>
  bool follow(Direction direction, Index driven) {
    const int most = 200 + 60 * static_cast<int>(m_springs.size());
    double left = 1;
    for (int events = 0; events < most; ++events) {
      const VectorXd move = left * direction();
      const Event event = firstEvent(move, driven);
      m_position += event.share * move;
      press();
      if (event.spring < 0) return m_position.allFinite();
      left *= 1 - event.share;
      setContact(event.spring, event.next);
    }
    return false;
  }

  /// Movement per newton at i. Only the lower half of the flexibility is kept up to date.
  VectorXd column(Index i) const {
    VectorXd out(size());
    out.head(i) = m_flexibility.row(i).head(i).transpose();
    out.tail(size() - i) = m_flexibility.col(i).tail(size() - i);
    return out;
  }

 private:
  /// The lowest-numbered of the first events: with that choice pivoting at a standstill cannot cycle
  /// (Murty's least-index rule for P-matrices).
  Event firstEvent(const VectorXd& move, Index driven) const {
    const double still = 1e-13 * move.cwiseAbs().maxCoeff();
    Event first;
    for (Index i = 0; i < move.size(); ++i) {
      if (i == driven || std::abs(move[i]) <= still) continue;
      const Event event = nextEvent(spring(i), m_position[i], move[i]);
      if (event.share < first.share - 1e-12) first = {event.share, i, event.next};
    }
    return first;
  }

  /// Pressed cells remember how far they were pressed.
  void press() {
    for (Index i = m_bolts; i < size(); ++i)
      if (spring(i).contact == Contact::Pressed) spring(i).seat = std::max(spring(i).seat, m_position[i]);
  }

  Index m_bolts;
  std::vector<Spring> m_springs;
  MatrixXd m_flexibility;
  VectorXd m_position;
};

SettlingSprings::SettlingSprings(const SettlingModel& model) : m_state(std::make_unique<State>(model)) {}
SettlingSprings::SettlingSprings(const SettlingSprings& other)
    : m_state(std::make_unique<State>(*other.m_state)) {}
SettlingSprings& SettlingSprings::operator=(const SettlingSprings& other) {
  *m_state = *other.m_state;
  return *this;
}
SettlingSprings::~SettlingSprings() = default;

namespace {

tl::unexpected<Error> noRest(int bolt) {
  return fail(ErrorCode::OutOfRange, "bolt " + std::to_string(bolt + 1), "",
              "the joint does not come to rest while this bolt is turned",
              "a part that its gasket and the other bolts hold");
}

}  // namespace

Result<void> SettlingSprings::drawTogether(std::span<const Force> loads) {
  State& state = *m_state;
  const auto direction = [&] {
    VectorXd move = VectorXd::Zero(state.size());
    for (Index i = 0; i < state.bolts(); ++i)
      move += loads[static_cast<std::size_t>(i)].si() * state.column(i);
    return move;
  };
  if (!state.follow(direction, -1)) return noRest(0);
  for (Index i = 0; i < state.bolts(); ++i) {
    Spring& bolt = state.spring(i);
    bolt.seat = state.position(i) + loads[static_cast<std::size_t>(i)].si() / bolt.loading;
    state.setContact(i, Contact::Taut);
  }
  return {};
}

Result<void> SettlingSprings::pull(int bolt, Force load) {
  State& state = *m_state;
  Spring& spring = state.spring(bolt);
  if (spring.contact != Contact::Taut) {
    spring.seat = state.position(bolt);
    state.setContact(bolt, Contact::Taut);
  }
  const double change = load.si() - state.load(bolt);
  const auto direction = [&] {
    const VectorXd column = state.column(bolt);
    return VectorXd(column * (change / (1 - spring.loading * column[bolt])));
  };
  if (!state.follow(direction, bolt)) return noRest(bolt);
  spring.seat = state.position(bolt) + load.si() / spring.loading;
  return {};
}

Result<void> SettlingSprings::remove(int bolt) {
  CW_CHECK(pull(bolt, {}));
  m_state->setContact(bolt, Contact::Off);
  return {};
}

int SettlingSprings::bolts() const {
  return static_cast<int>(m_state->bolts());
}

bool SettlingSprings::canTip() const {
  for (Index i = m_state->bolts(); i < m_state->size(); ++i)
    if (m_state->spring(i).oneWay) return true;
  return false;
}

Force SettlingSprings::load(int bolt) const {
  return newtons(m_state->load(bolt));
}

std::vector<Force> SettlingSprings::loads() const {
  std::vector<Force> all;
  for (int i = 0; i < bolts(); ++i) all.push_back(load(i));
  return all;
}

bool SettlingSprings::started(int bolt) const {
  return m_state->spring(bolt).contact != Contact::Off;
}

Length SettlingSprings::approach(int bolt) const {
  return metres(m_state->position(bolt));
}

}  // namespace cw
