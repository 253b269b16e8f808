#pragma once
#include <QObject>
#include <QString>
#include <map>
#include <vector>

#include "core/base/result.h"

class QWidget;

namespace cw {

class Catalogue;
class Workspace;

/// What all computations of Figures share: what was typed last, by the name of the input, so that "thread"
/// is typed once for all of them; and the way from one computation to the next.
class FigureDesk final : public QObject {
  Q_OBJECT

 public:
  explicit FigureDesk(Workspace& workspace) : m_workspace(workspace) {}

  /// The open shop's rows and the shipped ones, as they are now.
  Result<const Catalogue*> catalogue() const;
  Workspace& workspace() const { return m_workspace; }

  /// What stands in an input; kept from one start of the program to the next. Numbers are written with a
  /// point, units as on screen.
  QString valueOf(const QString& input) const;
  void setValue(const QString& input, const QString& text);

  /// Fills inputs and brings a computation to the front.
  void carry(const QString& figure, const std::map<QString, QString>& values);

 signals:
  void valueChanged(const QString& input, const QString& text);
  void figureWanted(const QString& key);

 private:
  Workspace& m_workspace;
};

/// One computation: what the list shows and how its page is made. It is made when it is first shown.
struct Figure {
  QString key;        ///< for settings and tests: "convert"
  const char* title;  ///< in the list; translation context "figures"
  QWidget* (*make)(FigureDesk& desk, QWidget* parent);
};

/// The computations that exist, in the list's order.
const std::vector<Figure>& figures();

}  // namespace cw
