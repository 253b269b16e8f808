// A stranger recomputes what is on the screen: reads the inputs of the working that is shown and uses
// formulas of their own, from the textbook named beside each.
#include <cmath>
#include <map>

#include "app/documents/document_view.h"
#include "tests/app/figures/figures_desk.h"

namespace cw {
namespace {

constexpr double kPenAndPaper = 2e-3;  // four digits are shown large

/// The tables of the working as they stand on the screen: symbol → value, and unit.
class ShownWorking {
 public:
  explicit ShownWorking(const Document& document) {
    for (const Section& section : document.sections)
      for (const Block& block : section.blocks)
        if (const auto* table = std::get_if<Table>(&block))
          for (const auto& row : table->rows) read(row.front().text, row[2].text);
  }
  double operator[](const std::string& symbol) const {
    const auto found = m_values.find(symbol);
    if (found == m_values.end()) throw std::runtime_error("the working does not show " + symbol);
    return found->second;
  }

 private:
  void read(const std::string& symbol, const std::string& value) { m_values[symbol] = std::stod(value); }

  std::map<std::string, double> m_values;
};

class FiguresStranger : public FiguresDesk {
 protected:
  ShownWorking working() {
    child<QPushButton>(QStringLiteral("workingButton")).setChecked(true);
    settle();
    return ShownWorking(child<DocumentView>(QStringLiteral("working")).presented());
  }
  double shownNumber() { return std::stod(number()); }
  double lastNumber() {
    return std::stod(plainBlanks(page().findChildren<QLabel*>(QStringLiteral("number")).last()->text()));
  }
  void fill(std::initializer_list<std::pair<const char*, const char*>> inputs) {
    for (const auto& [input, text] : inputs) type(input, text);
  }
  static double rad(double degrees) { return degrees * 3.14159265358979 / 180; }
};

// T = K·F·d (Shigley, 9th ed., eq. 8-27)
TEST_F(FiguresStranger, RecomputesTheClampLoadByNutFactor) {
  show("clamp");
  fill({{"torque", "25 Nm"}, {"thread", "M8"}, {"condition", "dry"}, {"deviation", "4 %"}});
  const ShownWorking shown = working();
  const double load = shown["T"] / (shown["K"] * shown["d"] / 1000) / 1000;
  EXPECT_NEAR(shownNumber(), load, kPenAndPaper * load);
}

// Square-section textbook form with the angles taken apart: tan(φ+ρ′) by tan of the sum.
TEST_F(FiguresStranger, RecomputesTheClampLoadByTheLongForm) {
  show("clamp");
  fill({{"torque", "25 Nm"},
        {"thread", "M8"},
        {"condition", "µ 0.12 / 0.10"},
        {"face", "hex"},
        {"deviation", "4 %"}});
  const ShownWorking shown = working();
  const double phi = std::atan(shown["P"] / (3.14159265358979 * shown["d2"]));
  const double rho = std::atan(shown["µt"] / std::cos(rad(30)));
  const double arm = shown["d2"] / 2 * std::tan(phi + rho) + shown["µb"] * shown["Db"] / 2;
  EXPECT_NEAR(shownNumber(), shown["T"] / arm, kPenAndPaper * shownNumber());
}

TEST_F(FiguresStranger, RecomputesTheTorqueForAShareOfProof) {
  show("torque");
  fill({{"load", "75 % of proof"},
        {"thread", "M8"},
        {"grade", "8.8"},
        {"condition", "K 0.2"},
        {"deviation", "4 %"}});
  const ShownWorking shown = working();
  const double torque = 0.75 * shown["Sp"] * shown["As"] * shown["K"] * shown["d"] / 1000;
  EXPECT_NEAR(shownNumber(), torque, kPenAndPaper * torque);
}

TEST_F(FiguresStranger, RecomputesTheChangedTorque) {
  show("condition");
  fill({{"torque", "30 Nm"}, {"condition", "dry"}, {"inUse", "oiled"}, {"thread", "M8"}});
  const ShownWorking shown = working();
  const double torque = shown["T1"] * shown["K2"] / shown["K1"];
  EXPECT_NEAR(lastNumber(), torque, kPenAndPaper * torque);
}

// TW = T·L/(L + E·cos θ) (US Army TM 9-254)
TEST_F(FiguresStranger, RecomputesTheSettingAndTheTorqueBehindIt) {
  show("setting");
  fill(
      {{"aim", "30 Nm"}, {"graduation", "0.1 Nm"}, {"length", "10 in"}, {"offset", "3 in"}, {"angle", "45"}});
  const ShownWorking set = working();
  const double setting = set["T"] * set["L"] / (set["L"] + set["E"] * std::cos(rad(set["θ"])));
  EXPECT_NEAR(shownNumber(), setting, 0.05) << "to the mark";
  show("applied");
  fill({{"setting", "25 Nm"}, {"length", "10 in"}, {"offset", "3 in"}, {"angle", "45"}});
  const ShownWorking back = working();
  const double applied = back["TW"] * (back["L"] + back["E"] * std::cos(rad(back["θ"]))) / back["L"];
  EXPECT_NEAR(shownNumber(), applied, kPenAndPaper * applied);
}

// Shear area of the tapped thread (FED-STD-H28/2B) times the material's shear strength.
TEST_F(FiguresStranger, RecomputesStripping) {
  show("stripping");
  fill({{"thread", "M6"}, {"grade", "8.8"}, {"material", "cast aluminium 319-F"}, {"engagement", "6 mm"}});
  const ShownWorking shown = working();
  const double area = 3.14159265358979 / shown["P"] * shown["Le"] * shown["Ds"] *
                      (shown["P"] / 2 + std::tan(rad(30)) * (shown["Ds"] - shown["En"]));
  const double load = std::min(shown["τn"] * area, shown["Rm"] * shown["As"]) / 1000;
  EXPECT_NEAR(shownNumber(), load, kPenAndPaper * load);
}

// Springs in series turn θ = 360°·ΔF/P·(1/kb + 1/km) (Shigley, 9th ed.)
TEST_F(FiguresStranger, RecomputesTheAngle) {
  show("angle");
  fill({{"thread", "M12"},
        {"angleLoad", "40 kN"},
        {"snug", "5 kN"},
        {"plain", "30 mm"},
        {"threaded", "15 mm"},
        {"members", "aluminium"}});
  const ShownWorking shown = working();
  const double bolt = shown["E"] / 1000 / (shown["lt"] / shown["At"] + shown["ld"] / shown["Ad"]);
  const double members =
      shown["Em"] / 1000 * shown["d"] * shown["A"] * std::exp(shown["B"] * shown["d"] / shown["l"]);
  const double angle = 360 * (shown["F"] - shown["Fs"]) / 1000 / shown["P"] * (1 / bolt + 1 / members);
  EXPECT_NEAR(shownNumber(), angle, 5e-3 * angle) << "three digits are shown";
}

TEST_F(FiguresStranger, RecomputesAConversion) {
  show("convert");
  fill({{"torque", "83 ft-lb"}});
  const ShownWorking shown = working();
  // 83 ft·lbf = 83·12 in·lbf, by definition of the foot
  EXPECT_NEAR(shown["T[in·lbf]"], 996, 1e-2);
  EXPECT_NEAR(shown["T[N·m]"], 83 * 1.3558179483314004, 1e-2);
}

}  // namespace
}  // namespace cw
