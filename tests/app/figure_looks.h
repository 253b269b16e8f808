#pragma once
#include <utility>
#include <vector>

namespace cw {

/// A computation of Figures with a result, and the input that spoils it.
struct FigureLook {
  const char* figure;
  std::vector<std::pair<const char*, const char*>> inputs;
  std::pair<const char*, const char*> refused;
};

inline const std::vector<FigureLook>& figureLooks() {
  static const std::vector<FigureLook> kLooks{
      {"convert",
       {{"torque", "60 in-lb"}, {"thread", "1/4-20 UNC"}, {"grade", "SAE 5"}},
       {"torque", "60 lb"}},
      {"guard",
       {{"torque", "30 ft-lb"},
        {"second", "41 Nm"},
        {"thread", "M8"},
        {"grade", "8.8"},
        {"condition", "dry"},
        {"material", "grey iron"},
        {"engagement", "12 mm"}},
       {"grade", "SAE 5"}},
      {"condition",
       {{"torque", "30 Nm"},
        {"condition", "clean dry"},
        {"inUse", "oil"},
        {"thread", "M8"},
        {"grade", "8.8"}},
       {"inUse", "dry"}},
      {"setting",
       {{"aim", "22.5 Nm"},
        {"graduation", "1 ft-lb"},
        {"length", "10 in"},
        {"offset", "3 in"},
        {"deviation", "4 %"},
        {"thread", "M8"},
        {"grade", "8.8"}},
       {"graduation", "10 ft-lb"}},
      {"applied",
       {{"setting", "17 ft-lb"}, {"length", "10 in"}, {"offset", "3 in"}, {"angle", "45"}},
       {"angle", "200"}},
      {"clamp",
       {{"torque", "25 Nm"},
        {"thread", "M8"},
        {"grade", "8.8"},
        {"condition", "oiled"},
        {"face", "hex"},
        {"deviation", "4 %"}},
       {"torque", "4000 Nm"}},
      {"torque",
       {{"load", "75 % of proof"},
        {"thread", "M8"},
        {"grade", "8.8"},
        {"condition", "µ 0.12 / 0.10"},
        {"deviation", "4 %"}},
       {"load", "75 %"}},
      {"stripping",
       {{"thread", "M6"}, {"grade", "8.8"}, {"material", "cast aluminium 319-F"}, {"engagement", "6 mm"}},
       {"engagement", "0 mm"}},
      {"angle",
       {{"thread", "M12"},
        {"angleLoad", "40 kN"},
        {"snug", "5 kN"},
        {"plain", "30 mm"},
        {"threaded", "15 mm"},
        {"members", "steel"}},
       {"angleLoad", "3 kN"}},
  };
  return kLooks;
}

}  // namespace cw
