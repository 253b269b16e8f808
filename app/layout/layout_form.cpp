#include "app/layout/layout_form.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

#include "app/fields/number_field.h"
#include "app/layout/point_table.h"
#include "app/layout/shape_form.h"
#include "app/look/labels.h"
#include "app/look/measures.h"
#include "core/pattern/numeral_json.h"
#include "core/pattern/pattern.h"

namespace cw {
namespace {

constexpr const LengthUnit* kLayoutUnits[] = {&kMillimetre, &kInch};
constexpr std::size_t kFreeKind = 5;
enum OutlineKind { NoOutline, RoundKind, CornersKind };

QString numbersText(const std::vector<std::size_t>& numbers) {
  QStringList out;
  for (const std::size_t number : numbers) out << QString::number(number);
  return out.join(QLatin1Char(' '));
}

QString groupsText(const Layout& layout) {
  QStringList out;
  for (const auto& group : layout.groups) out << numbersText(group);
  return out.join(QStringLiteral("; "));
}

QString ownText(const Labels& labels) {
  QStringList out;
  for (const std::string& label : labels.own) out << toQt(label);
  return out.join(QLatin1Char(' '));
}

QString cornersText(const PolygonOutline& outline, const LengthUnit& unit) {
  QStringList out;
  for (const Point& corner : outline.corners)
    out << toQt(numeral(corner.x, unit)) + QLatin1Char(' ') + toQt(numeral(corner.y, unit));
  return out.join(QStringLiteral("; "));
}

int kindOf(const std::optional<Outline>& outline) {
  if (!outline) return NoOutline;
  return std::holds_alternative<RoundOutline>(*outline) ? RoundKind : CornersKind;
}

}  // namespace

LayoutForm::LayoutForm(QWidget* parent) : QWidget(parent), m_column(new QVBoxLayout(this)) {
  m_column->setContentsMargins(0, 0, 8, 0);
  m_unit = add(new QComboBox, tr("Lengths in"));
  for (const LengthUnit* unit : kLayoutUnits) m_unit->addItem(toQt(unit->words));
  m_unit->setObjectName(QStringLiteral("unitChoice"));
  connect(m_unit, &QComboBox::activated, this, &LayoutForm::chooseUnit);
  m_shape = add(new ShapeForm, tr("Shape"));
  connect(m_shape, &ShapeForm::edited, this, &LayoutForm::read);
  connect(m_shape, &ShapeForm::kindChosen, this, &LayoutForm::chooseKind);
  m_points = add(new PointTable);
  connect(m_points, &PointTable::edited, this, [this](const std::vector<Point>& points) {
    Layout layout = m_layout;
    layout.shape = FreePoints{points};
    if (layout.labels.style == LabelStyle::Own) layout.labels.own = ownLabelsFor(layout, points.size());
    if (points.size() != keptHoles(m_layout).size()) layout.groups.clear();
    offer(layout);
  });
  connect(m_points, &PointTable::removed, this,
          [this](std::size_t position) { offer(withoutPosition(m_layout, position)); });
  m_leftOut = add(new InputField({QStringLiteral("left_out"), tr("Holes without a fastener"), {}, true}));
  connect(m_leftOut, &InputField::edited, this, &LayoutForm::read);
  addLabels();
  addView();
  addOutline();
  m_groups = add(new InputField(
      {QStringLiteral("groups"), tr("Groups of neighbours"), QStringLiteral("1 2 3; 4 5 6"), true}));
  connect(m_groups, &InputField::edited, this, &LayoutForm::read);
  m_column->addStretch(1);
}

template <class Widget>
Widget* LayoutForm::add(Widget* widget, const QString& heading) {
  if (!heading.isEmpty()) {
    auto* label = textLabel(heading, deskFont(), QPalette::PlaceholderText);
    label->setBuddy(widget);
    m_column->addWidget(label);
    if (widget->accessibleName().isEmpty()) widget->setAccessibleName(heading);
  }
  m_column->addWidget(widget);
  return widget;
}

void LayoutForm::addLabels() {
  m_labels = add(new QComboBox, tr("Labels"));
  m_labels->addItems({tr("Numbers"), tr("Letters"), tr("Clock"), tr("As written on the part")});
  m_labels->setObjectName(QStringLiteral("labelChoice"));
  m_own =
      add(new InputField({QStringLiteral("labels"), tr("Labels in turn"), QStringLiteral("A1 A2 B1 B2")}));
  connect(m_own, &InputField::edited, this, &LayoutForm::read);
  connect(m_labels, &QComboBox::activated, this, [this](int style) {
    Layout layout = m_layout;
    const auto all = positions(m_layout);
    layout.labels.style = static_cast<LabelStyle>(style);
    layout.labels.own.clear();
    if (layout.labels.style == LabelStyle::Own && all)
      for (const Position& position : *all) layout.labels.own.push_back(position.label);
    offer(layout);
  });
}

void LayoutForm::addView() {
  m_rotation = add(new NumberField({QStringLiteral("rotation"), tr("Turned clockwise, degrees"), {}}));
  connect(m_rotation, &InputField::edited, this, &LayoutForm::read);
  m_mirrored = add(new QCheckBox(tr("Seen from the other side")));
  m_mirrored->setObjectName(QStringLiteral("mirroredBox"));
  connect(m_mirrored, &QCheckBox::clicked, this, &LayoutForm::read);
}

void LayoutForm::addOutline() {
  m_outline = add(new QComboBox, tr("Outline of the part"));
  m_outline->addItems({tr("None"), tr("Round"), tr("Corner by corner")});
  m_outline->setObjectName(QStringLiteral("outlineChoice"));
  connect(m_outline, &QComboBox::activated, this, [this](int kind) {
    m_corners->setVisible(kind == CornersKind);
    if (kind == CornersKind) return emit outlineWanted();
    Layout layout = m_layout;
    if (kind == NoOutline) layout.outline.reset();
    if (kind == RoundKind) layout.outline = usualOutline(m_layout);
    offer(layout);
  });
  m_diameter =
      add(new NumberField({QStringLiteral("diameter_of_outline"), tr("Diameter of the outline"), {}}));
  connect(m_diameter, &InputField::edited, this, &LayoutForm::read);
  m_corners = add(new InputField({QStringLiteral("corners"), tr("Corners of the outline, x y in turn"),
                                  QStringLiteral("-80 0; 0 80; 80 0")}));
  connect(m_corners, &InputField::edited, this, &LayoutForm::read);
}

void LayoutForm::present(const Layout& layout) {
  m_layout = layout;
  const bool isFree = std::holds_alternative<FreePoints>(layout.shape);
  const auto unit = std::find(std::begin(kLayoutUnits), std::end(kLayoutUnits), layout.unit);
  m_unit->setCurrentIndex(unit == std::end(kLayoutUnits) ? -1 : static_cast<int>(unit - kLayoutUnits));
  m_shape->present(layout.shape, *layout.unit);
  m_points->setVisible(isFree);
  if (isFree) m_points->present(layout);
  const auto show = [](InputField* field, const QString& text) {
    field->find({});
    if (!field->edit()->hasFocus()) field->setText(text);
  };
  m_leftOut->setVisible(!isFree);
  show(m_leftOut, numbersText(layout.leftOut));
  m_labels->setCurrentIndex(static_cast<int>(layout.labels.style));
  m_own->setVisible(layout.labels.style == LabelStyle::Own);
  show(m_own, ownText(layout.labels));
  show(m_rotation, toQt(numeral(layout.view.rotation, kDegree)));
  m_mirrored->setChecked(layout.view.mirrored);
  const auto* round = layout.outline ? std::get_if<RoundOutline>(&*layout.outline) : nullptr;
  const auto* polygon = layout.outline ? std::get_if<PolygonOutline>(&*layout.outline) : nullptr;
  const bool isBegun = m_corners->edit()->hasFocus() && m_outline->currentIndex() == CornersKind;
  if (!isBegun || layout.outline) m_outline->setCurrentIndex(kindOf(layout.outline));
  m_corners->setVisible(polygon != nullptr || isBegun);
  show(m_corners, polygon != nullptr ? cornersText(*polygon, *layout.unit) : QString());
  m_diameter->setVisible(round != nullptr);
  if (round != nullptr) show(m_diameter, toQt(numeral(round->diameter, *layout.unit)));
  show(m_groups, groupsText(layout));
}

void LayoutForm::read() {
  Layout layout = m_layout;
  const std::optional<Shape> shape = m_shape->shape();
  bool good = shape.has_value();
  if (shape) layout.shape = *shape;
  if (std::holds_alternative<FreePoints>(m_layout.shape)) layout.shape = m_layout.shape;
  good = readNumbers(m_leftOut, layout.leftOut) && good;
  if (layout.labels.style == LabelStyle::Own) layout.labels.own = wordsIn(m_own->text());
  m_own->find({});
  const auto rotation = m_rotation->number();
  m_rotation->findTrouble(rotation ? QString() : worded(rotation.error()));
  if (rotation) layout.view.rotation = degrees(*rotation);
  layout.view.mirrored = m_mirrored->isChecked();
  good = readOutline(layout) && readGroups(layout) && rotation && good;
  if (good) offer(layout);
}

bool LayoutForm::readNumbers(InputField* field, std::vector<std::size_t>& into) {
  const auto numbers = wholeNumbers(field->text(), fromQt(field->name()));
  field->findTrouble(numbers ? QString() : worded(numbers.error()));
  if (numbers) into = *numbers;
  return numbers.has_value();
}

bool LayoutForm::readGroups(Layout& into) {
  into.groups.clear();
  m_groups->find({});
  for (const QString& text : toQt(m_groups->text()).split(QLatin1Char(';'), Qt::SkipEmptyParts)) {
    const auto group = wholeNumbers(fromQt(text), "groups");
    if (!group) return m_groups->findTrouble(worded(group.error())), false;
    into.groups.push_back(*group);
  }
  return true;
}

bool LayoutForm::readOutline(Layout& into) {
  if (m_outline->currentIndex() == CornersKind) return readCorners(into);
  auto* round = into.outline ? std::get_if<RoundOutline>(&*into.outline) : nullptr;
  if (round == nullptr) return true;
  const auto diameter = m_diameter->number();
  m_diameter->findTrouble(diameter ? QString() : worded(diameter.error()));
  if (diameter) round->diameter = quantity(*diameter, *into.unit);
  return diameter.has_value();
}

bool LayoutForm::readCorners(Layout& into) {
  m_corners->find({});
  if (m_corners->empty()) return true;
  const auto corners = pointsIn(m_corners->text(), *into.unit, m_corners->numberMark());
  if (!corners) return m_corners->findTrouble(worded(corners.error())), false;
  into.outline = PolygonOutline{*corners};
  return true;
}

void LayoutForm::chooseKind(int kind) {
  if (static_cast<std::size_t>(kind) == m_layout.shape.index()) return;
  Layout layout = m_layout;
  if (static_cast<std::size_t>(kind) == kFreeKind) {
    if (const auto loose = freed(m_layout)) layout = *loose;
  } else {
    layout.shape = ShapeForm::beginning(static_cast<std::size_t>(kind));
    if (layout.labels.style == LabelStyle::Own) layout.labels = {};
  }
  layout.leftOut.clear();
  layout.groups.clear();
  offer(layout);
}

void LayoutForm::chooseUnit(int unit) {
  Layout layout = m_layout;
  layout.unit = kLayoutUnits[unit];
  offer(layout);
}

void LayoutForm::offer(const Layout& layout) {
  const auto* free = std::get_if<FreePoints>(&layout.shape);
  const bool isBeginning = free != nullptr && free->points.empty();
  const auto placed = positions(layout);
  if (placed || isBeginning)
    emit edited(layout);
  else if (!refuse(placed.error()))
    m_points->refuse(placed.error());
}

bool LayoutForm::refuse(const Error& error) {
  const QString place = toQt(error.place);
  const auto at = [&](InputField* field, const char* beginning) {
    if (!place.startsWith(QLatin1String(beginning)) || !field->isVisibleTo(this)) return false;
    field->findTrouble(worded(error));
    return true;
  };
  return m_shape->refuse(error) || at(m_leftOut, "left_out") || at(m_own, "labels") ||
         at(m_groups, "groups") || at(m_rotation, "view") || at(m_corners, "outline") ||
         at(m_diameter, "outline") || (m_points->isVisibleTo(this) && m_points->refuse(error));
}

}  // namespace cw
