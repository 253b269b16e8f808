#include "app/print/press.h"

#include <QGuiApplication>
#include <iostream>

#include "app/look/fonts.h"

namespace cw {
namespace {

/// What Qt mutters about the surroundings of a program without a screen is not for who gave the command.
void passOnTrouble(QtMsgType type, const QMessageLogContext&, const QString& text) {
  if (type == QtCriticalMsg || type == QtFatalMsg) std::cerr << text.toStdString() << "\n";
}

}  // namespace

Press::Press() {
  if (QCoreApplication::instance() != nullptr) return;
  // Before the application exists: with the usual platform it would abort where there is no display.
  qputenv("QT_QPA_PLATFORM", "offscreen");
  qInstallMessageHandler(passOnTrouble);
  tellFontsApart();
  static int count = 1;
  static char name[] = "clampwright";
  static char* words[] = {name, nullptr};
  m_application = std::make_unique<QGuiApplication>(count, words);
}

Press::~Press() = default;

}  // namespace cw
