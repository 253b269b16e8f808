// The window's tests run without a screen; the platform must be chosen before the application exists.
#include <gmock/gmock.h>

#include <QApplication>
#include <QSettings>

#include "app/look/fonts.h"
#include "tests/support/temporary_folder.h"

int main(int count, char** words) {
  testing::InitGoogleMock(&count, words);
  qputenv("QT_QPA_PLATFORM", "offscreen");
  cw::tellFontsApart();
  const cw::TemporaryFolder folder;  // settings of their own, gone afterwards
  QSettings::setDefaultFormat(QSettings::IniFormat);
  QSettings::setPath(QSettings::IniFormat, QSettings::UserScope,
                     QString::fromStdString(folder.path().string()));
  QApplication::setOrganizationName(QStringLiteral("Clampwright tests"));
  QApplication application(count, words);
  return RUN_ALL_TESTS();
}
