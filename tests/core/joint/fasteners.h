#pragma once
#include <gmock/gmock.h>

#include <string>

#include "core/fastener/catalogue.h"
#include "core/fastener/material.h"
#include "core/joint/stripping.h"
#include "core/units/format.h"
#include "core/units/parse.h"
#include "tests/support/matchers.h"

// Fasteners for the tests of this room: from the shipped library, or made up on the spot.
namespace cw::testing_joint {

inline Thread thread(std::string_view written) {
  return shippedCatalogue().thread(written).value();
}

inline Grade grade(std::string_view written, const Thread& on) {
  return shippedCatalogue().grade(written, on).value();
}

inline Condition condition(std::string_view written) {
  return shippedCatalogue().condition(written).value();
}

inline Range exactly(double value) {
  return {value, value, value};
}

inline StatedTorque torque(std::string_view written) {
  return parse<TorqueTag>(written).value();
}

/// A face whose mean bearing diameter is `mean`.
inline BearingFace faceWithMean(Length mean) {
  return {"test face", "", mean * 1.2, mean * 0.8, {}};
}

/// A tapped hole in cast aluminium, shear strength 130 MPa.
inline TappedHole castingHole(Length engagement) {
  TappedHole hole;
  hole.material.name = "cast aluminium";
  hole.material.shearStrength = megapascals(130);
  hole.material.provenance.source = "test";
  hole.engagement = engagement;
  return hole;
}

/// The English sentence of a refusal; empty, and the test fails, if there was none.
template <class T>
std::string refusal(const Result<T>& result) {
  EXPECT_FALSE(result.has_value()) << "expected a refusal";
  return result ? std::string() : sentence(result.error());
}

}  // namespace cw::testing_joint
