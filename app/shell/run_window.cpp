#include "app/shell/run_window.h"

#include <QApplication>
#include <iostream>
#include <string_view>

#include "app/common/settings.h"
#include "app/common/wording.h"
#include "app/look/fonts.h"
#include "app/shell/main_window.h"

namespace cw {
namespace {

/// The shop file that the command line names; empty if it names none.
QString shopFileFrom(int count, char** words) {
  for (int i = 1; i < count; ++i) {
    const std::string_view word = words[i];
    if (word == "--shop" && i + 1 < count) return toQt(words[i + 1]);
    if (word.starts_with("--shop=")) return toQt(word.substr(7));
  }
  return {};
}

}  // namespace

int runWindow(int count, char** words) {
  QApplication::setOrganizationName(QStringLiteral("Clampwright"));
  QApplication::setApplicationName(QStringLiteral("clampwright"));
  tellFontsApart();
  QApplication application(count, words);
  MainWindow::applyLook();
  SystemClock clock;
  Workspace workspace(clock);
  const QString named = shopFileFrom(count, words);
  const QString file = named.isEmpty() ? Settings().shopFile() : named;
  const Result<void> opened = file.isEmpty() ? Result<void>() : workspace.openShop(file);
  if (!opened && !named.isEmpty()) {
    std::cerr << "clampwright: " << sentence(opened.error()) << "\n";
    return exitCode(opened.error().code);
  }
  MainWindow window(workspace);
  if (!opened) window.shopPage()->sayTrouble(wordedWithPlace(opened.error()));
  window.QMainWindow::show();
  return QApplication::exec();
}

}  // namespace cw
