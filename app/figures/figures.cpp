#include <QCoreApplication>

#include "app/figures/convert_page.h"
#include "app/figures/figure.h"

namespace cw {

const std::vector<Figure>& figures() {
  static const std::vector<Figure> kFigures{
      {QStringLiteral("convert"), QT_TRANSLATE_NOOP("figures", "Convert"), makeConvertPage},
  };
  return kFigures;
}

}  // namespace cw
