#pragma once
#include <gmock/gmock.h>

#include <QComboBox>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTableView>

#include "app/common/navigator.h"
#include "app/common/settings.h"
#include "app/common/wording.h"
#include "app/common/workspace.h"
#include "app/documents/desk_page.h"
#include "app/documents/document_view.h"
#include "core/store/file_io.h"
#include "tests/app/look.h"
#include "tests/support/sample_shop.h"

namespace cw {

/// The sample shop, open in a workspace, and a user at the desk.
class DeskTest : public testing::Test {
 protected:
  DeskTest() {
    const std::string keyFile = (sample.folder() / "secret-key").string();
    test::need(writeFile(keyFile, writeSecretKey(sample.key()), Existing::Kept, Access::OwnerOnly));
    Settings().setKeyFile(toQt(keyFile));
  }
  void open() { test::need(workspace.openShop(toQt(sample.file().string()))); }

  template <class Widget>
  static Widget& child(const QWidget& within, const char* name) {
    auto* found = within.findChild<Widget*>(QLatin1String(name));
    if (found == nullptr) throw std::runtime_error(std::string("no widget is called ") + name);
    return *found;
  }
  static QString said(const QWidget& within, const char* name = "deskSaid") {
    const QWidget& label = child<QWidget>(within, name);
    return label.isVisibleTo(&within) ? label.property("text").toString() : QString();
  }
  static void press(const QWidget& within, const char* name) { child<QPushButton>(within, name).click(); }
  static bool offers(const QWidget& within, const char* name) {
    return child<QPushButton>(within, name).isVisibleTo(&within);
  }
  static void sign(const QWidget& page, const QString& who, const QString& typed,
                   const QString& remark = {}) {
    auto& person = child<QComboBox>(page, "signerChoice");
    person.setCurrentIndex(person.findData(who));
    child<QLineEdit>(page, "signerPin").setText(typed);
    child<QPlainTextEdit>(page, "remarkField").setPlainText(remark);
    press(page, "signButton");
  }
  static QString text(const DeskPage& page) { return page.thing()->toPlainText(); }
  static int rows(const DeskPage& page) { return page.list()->model()->rowCount(); }

  /// Shows the place in both schemes for people to look at, and checks what can be checked of a look.
  static void showAll(QWidget& place, const QString& name) {
    place.resize(1280, 800);
    for (const Scheme scheme : {Scheme::Light, Scheme::Dark}) {
      useLook(scheme);
      place.show();
      for (int turn = 0; turn < 4; ++turn) QApplication::processEvents();  // wrapped text settles in turns
      EXPECT_TRUE(savePicture(
          place, name + (scheme == Scheme::Light ? QLatin1String("_light") : QLatin1String("_dark"))));
    }
    EXPECT_THAT(namelessFocusTargets(place).join(QLatin1Char(',')).toStdString(), testing::IsEmpty());
  }

  test::SampleShop sample;
  Workspace workspace{sample.clock()};
  Navigator navigator;
  const QString pin = toQt(test::kPin);
};

}  // namespace cw
