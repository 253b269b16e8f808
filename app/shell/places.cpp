#include "app/shell/places.h"

#include <QCoreApplication>

#include "app/bench/bench_place.h"

namespace cw {

const std::vector<Place>& places() {
  static const std::vector<Place> kPlaces{
      {QStringLiteral("bench"), QT_TRANSLATE_NOOP("places", "Bench"), makeBenchPlace},
  };
  return kPlaces;
}

}  // namespace cw
