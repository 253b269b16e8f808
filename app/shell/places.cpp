#include "app/shell/places.h"

#include <QCoreApplication>

#include "app/bench/bench_place.h"
#include "app/crib/crib_place.h"
#include "app/figures/figures_place.h"
#include "app/library/library_place.h"
#include "app/records/records_place.h"
#include "app/sheets/sheets_place.h"

namespace cw {

const std::vector<Place>& places() {
  static const std::vector<Place> kPlaces{
      {QStringLiteral("bench"), QT_TRANSLATE_NOOP("places", "Bench"), makeBenchPlace},
      {QStringLiteral("sheets"), QT_TRANSLATE_NOOP("places", "Sheets"), makeSheetsPlace},
      {QStringLiteral("records"), QT_TRANSLATE_NOOP("places", "Records"), makeRecordsPlace},
      {QStringLiteral("library"), QT_TRANSLATE_NOOP("places", "Library"), makeLibraryPlace},
      {QStringLiteral("crib"), QT_TRANSLATE_NOOP("places", "Tool crib"), makeCribPlace},
      {QStringLiteral("figures"), QT_TRANSLATE_NOOP("places", "Figures"), makeFiguresPlace},
  };
  return kPlaces;
}

}  // namespace cw
