#include "core/units/unit.h"

#include <array>

namespace cw {
namespace {
template <class Tag, std::size_t N>
using Table = std::array<const Unit<Tag>*, N>;
}

#define CW_UNITS(Tag, count, ...)                         \
  template <>                                             \
  std::span<const Unit<Tag>* const> unitsOf<Tag>() {      \
    static constexpr Table<Tag, count> kAll{__VA_ARGS__}; \
    return kAll;                                          \
  }

CW_UNITS(TorqueTag, 7, &kNewtonMetre, &kNewtonCentimetre, &kPoundInch, &kPoundFoot, &kKilogramMetre,
         &kKilogramCentimetre, &kOunceInch)
CW_UNITS(ForceTag, 5, &kNewton, &kKilonewton, &kPoundForce, &kKip, &kKilogramForce)
CW_UNITS(LengthTag, 5, &kMillimetre, &kMetre, &kMicrometre, &kInch, &kFoot)
CW_UNITS(AreaTag, 2, &kSquareMillimetre, &kSquareInch)
CW_UNITS(StressTag, 7, &kMegapascal, &kPascal, &kKilopascal, &kGigapascal, &kBar, &kPsi, &kKsi)
CW_UNITS(AngleTag, 2, &kDegree, &kRadian)
CW_UNITS(StiffnessTag, 2, &kNewtonPerMetre, &kKilonewtonPerMillimetre)
CW_UNITS(TemperatureTag, 3, &kCelsius, &kFahrenheit, &kKelvin)
CW_UNITS(MassTag, 2, &kKilogram, &kGram)
CW_UNITS(VolumeTag, 2, &kLitre, &kMillilitre)
CW_UNITS(DurationTag, 3, &kMinute, &kSecond, &kHour)

#undef CW_UNITS

}  // namespace cw
