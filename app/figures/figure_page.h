#pragma once
#include <QScrollArea>
#include <vector>

#include "app/fields/input_field.h"
#include "app/figures/figure.h"
#include "core/report/outcome.h"

class QBoxLayout;
class QVBoxLayout;

namespace cw {

class OutcomeView;

/// The page of one computation: the inputs on the left, what comes of them on the right (below, where the
/// window is narrow). Everything is computed anew at every key; what is refused is said under its input.
class FigurePage : public QScrollArea {
  Q_OBJECT

 public:
  OutcomeView* outcomeView() const { return m_outcome; }

 protected:
  FigurePage(FigureDesk& desk, const QString& title, const QString& purpose);

  /// Takes the field into the form; returns it.
  template <class Field>
  Field* add(Field* field) {
    take(field);
    return field;
  }

  virtual Result<Outcome> compute() const = 0;
  /// Says what is found about inputs beside what each finds itself.
  virtual void remarkInputs() {}

  FigureDesk& desk() const { return m_desk; }
  void refresh();

  void showEvent(QShowEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void take(InputField* field);
  void follow(const QString& input, const QString& text);
  void findInFields();
  bool refuseAtItsField(const Error& error);
  QStringList stillWanted() const;
  void arrange();
  void pointFocus();

  FigureDesk& m_desk;
  std::vector<InputField*> m_fields;
  const InputField* m_typedIn = nullptr;  ///< while what it says goes to the desk
  QWidget* m_formSide;
  QBoxLayout* m_across;
  QVBoxLayout* m_form;
  OutcomeView* m_outcome;
};

}  // namespace cw
