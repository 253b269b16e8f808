#pragma once
#include "core/joint/tightening_angle.h"

namespace cw {

enum class Roughness { Fine, Medium, Coarse };  ///< Rz below 10 µm, 10 to 40 µm, 40 to 160 µm
enum class LoadKind { Tension, Shear };

/// Plastic flattening of rough faces, fZ = threads + head and nut + each inner interface.
/// `bearings` counts faces under head and nut (1 for a tapped hole, 2 with a nut), `interfaces` the joints
/// between clamped parts; negative counts are OutOfRange.
/// Source: VDI 2230 part 1, table 5 (from memory), µm: fine 3/2.5/1.5 tension, 3/3/2 shear; medium 3/3/2,
/// 3/4.5/2.5; coarse 3/4/3, 3/6.5/3.5.
Result<Worked<Length>> embedding(Roughness roughness, LoadKind kind, int bearings, int interfaces);

/// FZ = fZ/(1/kb + 1/km): clamp load lost to embedding. fZ zero or more, stiffness above zero.
/// Source: VDI 2230 part 1 (from memory).
Result<Worked<Force>> embeddingLoss(Length embedding, const JointStiffness& joint);

/// How far bolt and parts grow with heat, 1/K.
struct Expansion {
  double bolt;
  double members;
};

/// ΔF = l·ΔT·(αm − αb)/(1/kb + 1/km): change of clamp load when all of the joint warms by ΔT. Grip and
/// stiffness above zero, expansion within [0, 10⁻⁴] per kelvin, else OutOfRange. Moduli are taken as
/// constant. Source: VDI 2230 part 1 (from memory).
Result<Worked<Force>> thermalChange(Length grip, TemperatureDifference warming, const Expansion& expansion,
                                    const JointStiffness& joint);

}  // namespace cw
