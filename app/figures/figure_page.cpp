#include "app/figures/figure_page.h"

#include <QEvent>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>
#include <algorithm>

#include "app/common/tab_order.h"
#include "app/figures/outcome_view.h"
#include "app/look/labels.h"
#include "app/look/measures.h"

namespace cw {
namespace {

/// Inputs that the engine calls by another name than the form.
constexpr std::pair<const char*, const char*> kOtherNames[] = {{"wrench length", "length"},
                                                               {"adapter offset", "offset"},
                                                               {"adapter angle", "angle"},
                                                               {"prevailing torque", "prevailing"},
                                                               {"tolerance, low", "tolerance"},
                                                               {"tolerance, high", "tolerance"},
                                                               {"tool deviation", "deviation"},
                                                               {"snug load", "snug"},
                                                               {"plain length", "plain"},
                                                               {"threaded length", "threaded"},
                                                               {"grip length", "threaded"},
                                                               {"bearing face", "face"},
                                                               {"clearance hole", "face"},
                                                               {"nut factor", "condition"},
                                                               {"thread friction", "condition"},
                                                               {"bearing friction", "condition"},
                                                               {"share of yield", "load"},
                                                               {"clamp load", "load"},
                                                               {"share", "load"},
                                                               {"clamp load", "angleLoad"}};

bool isInputOf(const std::string& place, const QString& input) {
  if (fromQt(input) == place) return true;
  return std::any_of(std::begin(kOtherNames), std::end(kOtherNames), [&](const auto& pair) {
    return place == pair.first && input == QLatin1String(pair.second);
  });
}

constexpr int kPageMargin = 24, kPageGap = 16, kFormLetters = 26, kOutcomeLetters = 34;

}  // namespace

FigurePage::FigurePage(FigureDesk& desk, const QString& title, const QString& purpose)
    : m_desk(desk),
      m_formSide(new QWidget),
      m_form(new QVBoxLayout(m_formSide)),
      m_outcome(new OutcomeView(desk)) {
  setFrameShape(QFrame::NoFrame);
  setWidgetResizable(true);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setFocusPolicy(Qt::NoFocus);
  auto* body = new QWidget;
  auto* down = new QVBoxLayout(body);
  down->setContentsMargins(kPageMargin, kPageMargin, kPageMargin, kPageMargin);
  down->setSpacing(kPageGap);
  down->addWidget(textLabel(title, deskFont(2, QFont::Bold)));
  down->addWidget(textLabel(purpose, deskFont(), QPalette::PlaceholderText));
  m_across = new QBoxLayout(QBoxLayout::LeftToRight);
  m_across->setSpacing(2 * kPageMargin);
  m_form->setContentsMargins(0, 0, 0, 0);
  m_form->setSpacing(kPageGap);
  m_form->addStretch(1);
  m_across->addWidget(m_formSide, 2);
  m_across->addWidget(m_outcome, 3);
  down->addLayout(m_across, 1);
  setWidget(body);
  connect(&desk, &FigureDesk::valueChanged, this, &FigurePage::follow);
}

void FigurePage::take(InputField* field) {
  m_fields.push_back(field);
  field->setText(m_desk.valueOf(field->name()));
  if (m_fields.size() == 1) passFocusOn(*this, *field);
  m_form->insertWidget(m_form->count() - 1, field);
  connect(field, &InputField::edited, this, [this, field] {
    m_typedIn = field;
    if (const auto understood = field->understood()) m_desk.setValue(field->name(), *understood);
    m_typedIn = nullptr;
    refresh();
  });
}

/// An input that this page has too was filled elsewhere.
void FigurePage::follow(const QString& input, const QString& text) {
  for (InputField* field : m_fields)
    if (field->name() == input && field != m_typedIn) field->setText(text);
  if (isVisible() && m_typedIn == nullptr) refresh();
}

void FigurePage::refresh() {
  findInFields();
  remarkInputs();
  if (const QStringList wanted = stillWanted(); !wanted.isEmpty()) return m_outcome->askFor(wanted);
  const auto outcome = compute();
  if (outcome) return m_outcome->present(*outcome);
  if (refuseAtItsField(outcome.error()))
    m_outcome->refuse(tr("Nothing is computed until what is refused is put right."));
  else
    m_outcome->refuse(wordedWithPlace(outcome.error()));
}

void FigurePage::findInFields() {
  for (InputField* field : m_fields) {
    const QString problem = field->problem();
    problem.isEmpty() ? field->find(field->remark()) : field->findTrouble(problem);
  }
}

bool FigurePage::refuseAtItsField(const Error& error) {
  for (InputField* field : m_fields) {
    if (!isInputOf(error.place, field->name())) continue;
    field->findTrouble(worded(error));
    return true;
  }
  return false;
}

/// The keyboard goes to what is still to be typed.
void FigurePage::pointFocus() {
  const auto isWanted = [](const InputField* field) { return !field->optional() && field->empty(); };
  const auto wanted = std::find_if(m_fields.begin(), m_fields.end(), isWanted);
  InputField* field = wanted == m_fields.end() ? m_fields.front() : *wanted;
  passFocusOn(*this, *field);
  const QWidget* focus = window()->focusWidget();
  if (focus != nullptr && isAncestorOf(focus)) field->setFocus(Qt::TabFocusReason);
}

QStringList FigurePage::stillWanted() const {
  QStringList out;
  for (const InputField* field : m_fields)
    if (!field->optional() && field->empty()) out << field->label();
  return out;
}

void FigurePage::showEvent(QShowEvent* event) {
  QScrollArea::showEvent(event);
  orderTabs({m_formSide, m_outcome});  // fields are added after what comes of them
  arrange();
  refresh();
  pointFocus();
}

void FigurePage::resizeEvent(QResizeEvent* event) {
  QScrollArea::resizeEvent(event);
  arrange();
}

void FigurePage::changeEvent(QEvent* event) {
  QScrollArea::changeEvent(event);
  if (event->type() == QEvent::FontChange) arrange();
}

/// Side by side only where both have room.
void FigurePage::arrange() {
  const int letter = fontMetrics().averageCharWidth();
  const bool wide = width() >= (kFormLetters + kOutcomeLetters) * letter + 3 * kPageMargin;
  m_across->setDirection(wide ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
}

}  // namespace cw
