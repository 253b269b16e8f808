#include "tests/benchmarks/settling_baseline.h"

#include <Eigen/Dense>

namespace cw {
namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

class FreshSolves {
 public:
  explicit FreshSolves(const SettlingModel& model)
      : m_model(model),
        m_bolts(model.boltCount()),
        m_position(VectorXd::Zero(model.flexibility.size())),
        m_peak(VectorXd::Zero(model.flexibility.size())),
        m_nut(VectorXd::Zero(m_bolts)),
        m_seated(static_cast<std::size_t>(m_bolts), false) {
    const Index n = m_position.size();
    const Eigen::Map<const MatrixXd> flexibility(model.flexibility.data(), n, n);
    m_body = flexibility.llt().solve(MatrixXd::Identity(n, n));
    for (Index i = m_bolts; i < n; ++i) m_body(i, i) -= cell(i).loading.si();
  }

  double load(Index bolt) const {
    if (!m_seated[static_cast<std::size_t>(bolt)]) return 0;
    return std::max(0.0, stiffness(bolt) * (m_nut[bolt] - m_position[bolt]));
  }

  /// Brings the bolts of `held` (force, or negative for not held) to their loads. Where Newton's method
  /// runs in circles, contacts change one by one, lowest number first.
  void bring(const VectorXd& held) {
    VectorXd tangent;
    VectorXd offset;
    contacts(held, tangent, offset);
    for (int iteration = 0; iteration < 400; ++iteration) {
      MatrixXd k = m_body;
      k.diagonal() += tangent;
      m_position = k.llt().solve(offset);
      VectorXd nextTangent;
      VectorXd nextOffset;
      contacts(held, nextTangent, nextOffset);
      if (nextTangent == tangent) break;
      if (iteration < 25) {
        tangent = nextTangent;
        offset = nextOffset;
      } else {
        Index first = 0;
        while (nextTangent[first] == tangent[first]) ++first;
        tangent[first] = nextTangent[first];
        offset[first] = nextOffset[first];
      }
    }
    for (Index i = m_bolts; i < m_position.size(); ++i) m_peak[i] = std::max(m_peak[i], m_position[i]);
    for (Index i = 0; i < m_bolts; ++i)
      if (held[i] >= 0) {
        m_nut[i] = m_position[i] + held[i] / stiffness(i);
        m_seated[static_cast<std::size_t>(i)] = true;
      }
  }

 private:
  const GasketCell& cell(Index i) const { return m_model.cells[static_cast<std::size_t>(i - m_bolts)]; }
  double stiffness(Index bolt) const { return m_model.bolts[static_cast<std::size_t>(bolt)].si(); }

  /// Forces on the body are offset - tangent·position.
  void contacts(const VectorXd& held, VectorXd& tangent, VectorXd& offset) const {
    tangent = VectorXd::Zero(m_position.size());
    offset = VectorXd::Zero(m_position.size());
    for (Index i = 0; i < m_bolts; ++i) {
      if (held[i] >= 0) {
        offset[i] = held[i];
      } else if (m_seated[static_cast<std::size_t>(i)] && m_nut[i] > m_position[i]) {
        tangent[i] = stiffness(i);
        offset[i] = stiffness(i) * m_nut[i];
      }
    }
    for (Index i = m_bolts; i < m_position.size(); ++i) {
      const double loading = cell(i).loading.si();
      const double unloading = cell(i).unloading.si();
      const double open = m_peak[i] * (1 - loading / unloading);
      if (m_position[i] >= m_peak[i]) {
        tangent[i] = loading;
      } else if (m_position[i] > open) {
        tangent[i] = unloading;
        offset[i] = unloading * open;
      } else {
        tangent[i] = 1e-7 * loading;
      }
    }
  }

  const SettlingModel& m_model;
  Index m_bolts;
  VectorXd m_position;
  VectorXd m_peak;
  VectorXd m_nut;
  std::vector<bool> m_seated;
  MatrixXd m_body;
};

}  // namespace

std::vector<Force> settleByFreshSolves(const SettlingModel& model, const TighteningPlan& tightening) {
  FreshSolves joint(model);
  const Index bolts = model.boltCount();
  VectorXd held(bolts);
  for (Index i = 0; i < bolts; ++i)
    held[i] = tightening.snugShare * tightening.target(static_cast<int>(i)).si();
  joint.bring(held);
  for (const SettlingPass& pass : tightening.passes)
    for (const int bolt : pass.order) {
      const double goal = pass.share * tightening.target(bolt - 1).si();
      if (joint.load(bolt - 1) >= goal) continue;
      held.setConstant(-1);
      held[bolt - 1] = goal;
      joint.bring(held);
    }
  std::vector<Force> loads;
  for (Index i = 0; i < bolts; ++i) loads.push_back(newtons(joint.load(i)));
  return loads;
}

}  // namespace cw
