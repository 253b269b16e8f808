#pragma once
#include <gmock/gmock.h>

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSettings>
#include <QStackedWidget>
#include <QTest>

#include "app/common/wording.h"
#include "app/common/workspace.h"
#include "app/fields/input_field.h"
#include "app/figures/figures_place.h"
#include "tests/app/look.h"

namespace cw {

/// Wrapped text settles in turns.
inline void settleLayout() {
  for (int turn = 0; turn < 4; ++turn) QApplication::processEvents();
}

/// The place Figures, and somebody who types.
class FiguresDesk : public testing::Test {
 protected:
  FiguresDesk() {
    QSettings().clear();
    useLook(Scheme::Light);
    place = std::make_unique<FiguresPlace>(workspace, navigator);
    place->resize(1280, 800);
    place->QWidget::show();
  }

  void show(const char* figure) {
    place->show(QLatin1String(figure));
    settle();
  }
  static void settle() { settleLayout(); }
  QWidget& page() { return *place->findChild<QStackedWidget*>()->currentWidget(); }
  template <class Widget>
  Widget& child(const QString& name) {
    auto* found = page().findChild<Widget*>(name);
    if (found == nullptr) throw std::runtime_error("no widget is called " + name.toStdString());
    return *found;
  }
  void type(const char* input, const char* text) {
    auto& edit = child<QLineEdit>(QLatin1String(input) + QLatin1String("Field"));
    edit.setFocus();
    edit.selectAll();
    *text == '\0' ? edit.del() : edit.insert(QString::fromUtf8(text));  // as if pasted: one edit
    settle();
  }
  void clearInputs() {
    for (InputField* field : page().findChildren<InputField*>()) type(field->name().toUtf8().constData(), "");
  }
  std::string found(const char* input) {
    return plainBlanks(child<QLabel>(QLatin1String(input) + QLatin1String("Found")).text());
  }
  static std::string plainBlanks(QString text) {
    return text.replace(QChar(0x202F), QLatin1Char(' '))
        .replace(QChar(0x00A0), QLatin1Char(' '))
        .toStdString();
  }
  /// The text of the first label of that name in the outcome; empty if there is none.
  std::string said(const char* name) {
    const auto* label = page().findChild<QLabel*>(QLatin1String(name));
    return label == nullptr ? std::string() : plainBlanks(label->text());
  }
  std::string number() { return said("number"); }

  void savePictures(const QString& name) {
    for (const Scheme scheme : {Scheme::Light, Scheme::Dark}) {
      useLook(scheme);
      settle();
      EXPECT_TRUE(savePicture(
          *place, name + (scheme == Scheme::Light ? QLatin1String("_light") : QLatin1String("_dark"))));
    }
    useLook(Scheme::Light);
    EXPECT_THAT(namelessFocusTargets(*place).join(QLatin1Char(',')).toStdString(), testing::IsEmpty());
  }

  SystemClock clock;
  Workspace workspace{clock};
  Navigator navigator;
  std::unique_ptr<FiguresPlace> place;
};

}  // namespace cw
