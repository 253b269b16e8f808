#include "tests/published/settling_ring_beam.h"

#include <Eigen/Dense>
#include <cmath>
#include <fstream>

namespace cw {
namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::Vector2d;
using Eigen::VectorXd;

constexpr int kPerPitch = 4;

/// Sizes in mm, N, MPa as in the file.
struct Ring {
  int bolts = 0;
  double modulus = 0, poisson = 0;
  double boltRadius = 0, beamRadius = 0, gasketRadius = 0;
  double width = 0, height = 0, gasketWidth = 0;
  double hub = 0;

  int nodes() const { return bolts * kPerPitch; }
  Vector2d at(double radius, int node) const {
    const double angle = 2 * kPi * node / nodes();
    return {radius * std::sin(angle), radius * std::cos(angle)};
  }
};

Ring ringOf(int bolts) {
  const auto& file = ringCases();
  const auto& g = file.at("geometry").at(std::to_string(bolts));
  Ring ring{bolts,      file.at("E"), file.at("nu"), g.at("Rb"), g.at("Rc"),
            g.at("Rg"), g.at("b"),    g.at("h"),     g.at("gw"), 0};
  ring.hub = Hub::cylinder(millimetres(g.at("rp")), millimetres(g.at("tp")), megapascals(ring.modulus),
                           ring.poisson)
                 .momentPerRadian.si();  // N·m/m = N
  return ring;
}

/// One beam between nodes i and i + 1: unknowns w, rx, ry at each, w(x, y) = w + rx·y - ry·x.
void addBeam(MatrixXd& k, const Ring& ring, int i) {
  const int j = (i + 1) % ring.nodes();
  const Vector2d along = ring.at(ring.beamRadius, j) - ring.at(ring.beamRadius, i);
  const double length = along.norm();
  const double c = along.x() / length;
  const double s = along.y() / length;
  const double shearModulus = ring.modulus / (2 * (1 + ring.poisson));
  const double wide = std::max(ring.width, ring.height);
  const double flat = std::min(ring.width, ring.height);
  const double torsion = wide * std::pow(flat, 3) *
                         (1 / 3.0 - 0.21 * flat / wide * (1 - std::pow(flat / wide, 4) / 12)) * shearModulus;
  const double inertia = ring.modulus * ring.width * std::pow(ring.height, 3) / 12;
  const double phi = 12 * inertia / (shearModulus * ring.width * ring.height * 5 / 6 * length * length);
  const double bend = inertia / (1 + phi);
  MatrixXd local = MatrixXd::Zero(6, 6);  // w, twist, slope at both ends
  const double l2 = length * length;
  const double side = 12 * bend / (l2 * length);
  const double cross = 6 * bend / l2;
  local(0, 0) = local(3, 3) = side;
  local(0, 3) = local(3, 0) = -side;
  local(0, 2) = local(2, 0) = local(0, 5) = local(5, 0) = cross;
  local(2, 3) = local(3, 2) = local(3, 5) = local(5, 3) = -cross;
  local(2, 2) = local(5, 5) = (4 + phi) * bend / length;
  local(2, 5) = local(5, 2) = (2 - phi) * bend / length;
  local(1, 1) = local(4, 4) = torsion / length;
  local(1, 4) = local(4, 1) = -torsion / length;
  MatrixXd turn = MatrixXd::Zero(6, 6);
  for (const int end : {0, 3}) {
    turn(end, end) = 1;
    turn.block<2, 2>(end + 1, end + 1) << c, s, s, -c;
  }
  const MatrixXd global = turn.transpose() * local * turn;
  const Index at[2] = {3 * i, 3 * j};
  for (int a = 0; a < 2; ++a)
    for (int b = 0; b < 2; ++b) k.block<3, 3>(at[a], at[b]) += global.block<3, 3>(3 * a, 3 * b);
}

/// Turning spring about the tangent, against a pipe that tilts freely (the last two unknowns).
void addHub(MatrixXd& k, const Ring& ring) {
  const Index pipe = 3 * ring.nodes();
  for (int i = 0; i < ring.nodes(); ++i) {
    const Vector2d chord = ring.at(ring.beamRadius, i + 1) - ring.at(ring.beamRadius, i - 1);
    const Vector2d tangent = chord.normalized();
    const double length = (ring.at(ring.beamRadius, i + 1) - ring.at(ring.beamRadius, i)).norm();
    VectorXd v = VectorXd::Zero(k.rows());
    v.segment<2>(3 * i + 1) = tangent;
    v.segment<2>(pipe) = -tangent;
    k += ring.hub * length * v * v.transpose();
  }
  k.diagonal().tail<2>().array() += 1;
}

/// Rows that take the movement at the bolts, then at the gasket nodes, out of the unknowns.
MatrixXd pickPoints(const Ring& ring) {
  MatrixXd pick = MatrixXd::Zero(ring.bolts + ring.nodes(), 3 * ring.nodes() + 2);
  const auto set = [&](Index row, int node, double radius) {
    const Vector2d offset = ring.at(radius, node) - ring.at(ring.beamRadius, node);
    pick.row(row).segment<3>(3 * node) << 1, offset.y(), -offset.x();
  };
  for (int i = 0; i < ring.bolts; ++i) set(i, i * kPerPitch, ring.boltRadius);
  for (int i = 0; i < ring.nodes(); ++i) set(ring.bolts + i, i, ring.gasketRadius);
  return pick;
}

double boltStiffness(int bolts, const std::string& gasket) {
  for (const auto& row : ringCases().at("bolt_stiffness"))
    if (row.at("N") == bolts && row.at("gasket") == gasket) return row.at("kb");
  return 0;
}

}  // namespace

const nlohmann::json& ringCases() {
  static const auto file = nlohmann::json::parse(std::ifstream(CW_TEST_DATA "/settling/ring_cases.json"));
  return file;
}

SettlingModel ringBeamModel(int bolts, const std::string& gasket) {
  const Ring ring = ringOf(bolts);
  const auto& law = ringCases().at("gaskets").at(gasket);
  const double piece = (ring.at(ring.gasketRadius, 1) - ring.at(ring.gasketRadius, 0)).norm();
  const double loading = double(law.at("kL")) * ring.gasketWidth * piece;
  const double unloading = double(law.at("kU")) * ring.gasketWidth * piece;
  MatrixXd k = MatrixXd::Zero(3 * ring.nodes() + 2, 3 * ring.nodes() + 2);
  for (int i = 0; i < ring.nodes(); ++i) addBeam(k, ring, i);
  addHub(k, ring);
  const MatrixXd pick = pickPoints(ring);
  const MatrixXd seats = pick.bottomRows(ring.nodes());
  k += 2 * loading * seats.transpose() * seats;  // two flanges: the gasket takes up twice the movement
  SettlingModel model;
  model.flexibility = Flexibility(static_cast<int>(pick.rows()));
  Eigen::Map<MatrixXd>(model.flexibility.data(), pick.rows(), pick.rows()) =
      2e-3 * pick * k.ldlt().solve(pick.transpose());
  model.cells.assign(static_cast<std::size_t>(ring.nodes()),
                     {newtonsPerMetre(1e3 * loading), newtonsPerMetre(1e3 * unloading), true});
  model.bolts.assign(static_cast<std::size_t>(bolts), newtonsPerMetre(1e3 * boltStiffness(bolts, gasket)));
  for (int i = 0; i < bolts; ++i) {
    const Vector2d place = ring.at(ring.boltRadius, i * kPerPitch);
    model.places.push_back({millimetres(place.x()), millimetres(place.y())});
  }
  model.boltsGoSlack = true;
  return model;
}

Force ringTarget(int bolts) {
  return megapascals(ringCases().at("bolt_stress")) *
         squareMillimetres(ringCases().at("geometry").at(std::to_string(bolts)).at("Ab"));
}

std::vector<int> ringStar(int bolts) {
  const int quarter = bolts / 4;
  const int middle = (quarter + 1) / 2;
  std::vector<int> offsets{0, middle};
  for (int k = 1; k < quarter; ++k)
    for (const int offset : {middle - k, middle + k})
      if (offset > 0 && offset < quarter &&
          std::find(offsets.begin(), offsets.end(), offset) == offsets.end())
        offsets.push_back(offset);
  std::vector<int> order;
  for (const int offset : offsets)
    for (const int turn : {0, 2, 1, 3}) order.push_back(offset + turn * quarter + 1);
  return order;
}

std::vector<int> ringCircular(int bolts) {
  std::vector<int> order;
  for (int i = 1; i <= bolts; ++i) order.push_back(i);
  return order;
}

}  // namespace cw
