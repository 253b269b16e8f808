#include "app/print/press.h"

#include <QGuiApplication>

#include "app/common/fonts.h"

namespace cw {

Press::Press() {
  if (QCoreApplication::instance() != nullptr) return;
  // Before the application exists: with the usual platform it would abort where there is no display.
  qputenv("QT_QPA_PLATFORM", "offscreen");
  tellFontsApart();
  static int count = 1;
  static char name[] = "clampwright";
  static char* words[] = {name, nullptr};
  m_application = std::make_unique<QGuiApplication>(count, words);
}

Press::~Press() = default;

}  // namespace cw
