#include "app/layout/shape_form.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "app/common/tab_order.h"
#include "app/fields/number_field.h"
#include "core/pattern/numeral_json.h"

namespace cw {
namespace {

constexpr std::size_t kCircleKind = 0, kCirclesKind = 4;

template <class Kind, auto Member>
auto slotOf(Shape& shape) {
  return &(std::get<Kind>(shape).*Member);
}

/// "6 × 90; 12 × 200 @ 15": count, diameter and the angle of the first hole.
QString circlesText(const ConcentricCircles& rings, const LengthUnit& unit) {
  QStringList out;
  for (const Circle& circle : rings.circles) {
    QString text = QStringLiteral("%1 x %2").arg(circle.count).arg(toQt(numeral(circle.diameter, unit)));
    if (circle.phase != Angle()) text += QStringLiteral(" @ ") + toQt(numeral(circle.phase, kDegree));
    out << text;
  }
  return out.join(QStringLiteral("; "));
}

Result<double> numberIn(const QString& text, DecimalMark mark) {
  return parseNumber(fromQt(text.trimmed()), mark, true).map([](const std::string& digits) {
    return numberOf(digits);
  });
}

Result<Circle> circleIn(const QString& text, const LengthUnit& unit, DecimalMark mark) {
  const QStringList phase = text.split(QLatin1Char('@'));
  const QStringList parts =
      QString(phase.front()).replace(QChar(0xD7), QLatin1Char('x')).split(QLatin1Char('x'));
  bool isCount = false;
  const std::size_t count = parts.front().trimmed().toUInt(&isCount);
  if (parts.size() != 2 || phase.size() > 2 || !isCount)
    return fail(ErrorCode::InvalidInput, "circles", fromQt(text),
                {"“%1” is not a circle", {shown(fromQt(text))}},
                "write count x diameter, such as 6 x 90; 12 x 200");
  CW_TRY(diameter, numberIn(parts[1], mark));
  Circle out{count, quantity(diameter, unit)};
  if (phase.size() == 1) return out;
  CW_TRY(angle, numberIn(phase[1], mark));
  out.phase = degrees(angle);
  return out;
}

}  // namespace

const std::vector<ShapeForm::Parameter>& ShapeForm::parametersOf(std::size_t kind) {
  // In the order of the variant.
  static const std::vector<Parameter> kParameters[] = {
      {{"count", QT_TR_NOOP("Positions"), [](Shape& s) -> Slot { return slotOf<Circle, &Circle::count>(s); }},
       {"diameter", QT_TR_NOOP("Bolt circle, diameter"),
        [](Shape& s) -> Slot { return slotOf<Circle, &Circle::diameter>(s); }},
       {"phase", QT_TR_NOOP("First hole clockwise from 12 o'clock"),
        [](Shape& s) -> Slot { return slotOf<Circle, &Circle::phase>(s); }},
       {"first_hole", QT_TR_NOOP("Position 1 is hole"),
        [](Shape& s) -> Slot { return slotOf<Circle, &Circle::firstHole>(s); }}},
      {{"rows", QT_TR_NOOP("Rows"), [](Shape& s) -> Slot { return slotOf<Rows, &Rows::rows>(s); }},
       {"columns", QT_TR_NOOP("Columns"), [](Shape& s) -> Slot { return slotOf<Rows, &Rows::columns>(s); }},
       {"row_spacing", QT_TR_NOOP("Between rows"),
        [](Shape& s) -> Slot { return slotOf<Rows, &Rows::rowSpacing>(s); }},
       {"column_spacing", QT_TR_NOOP("Between columns"),
        [](Shape& s) -> Slot { return slotOf<Rows, &Rows::columnSpacing>(s); }}},
      {{"width", QT_TR_NOOP("Width"),
        [](Shape& s) -> Slot { return slotOf<Perimeter, &Perimeter::width>(s); }},
       {"height", QT_TR_NOOP("Height"),
        [](Shape& s) -> Slot { return slotOf<Perimeter, &Perimeter::height>(s); }},
       {"across", QT_TR_NOOP("Positions on the top side"),
        [](Shape& s) -> Slot { return slotOf<Perimeter, &Perimeter::across>(s); }},
       {"upright", QT_TR_NOOP("Positions on the left side"),
        [](Shape& s) -> Slot { return slotOf<Perimeter, &Perimeter::upright>(s); }}},
      {{"count", QT_TR_NOOP("Positions"),
        [](Shape& s) -> Slot { return slotOf<cw::Line, &cw::Line::count>(s); }},
       {"spacing", QT_TR_NOOP("Between positions"),
        [](Shape& s) -> Slot { return slotOf<cw::Line, &cw::Line::spacing>(s); }}},
      {},
      {}};
  return kParameters[kind];
}

Shape ShapeForm::beginning(std::size_t kind) {
  static const Shape kShapes[] = {
      Circle{8, millimetres(150)},
      Rows{2, 5, millimetres(60), millimetres(50)},
      Perimeter{millimetres(240), millimetres(150), 5, 4},
      cw::Line{7, millimetres(40)},
      ConcentricCircles{{Circle{6, millimetres(90)}, Circle{12, millimetres(200)}}},
      FreePoints{}};
  return kShapes[kind];
}

ShapeForm::ShapeForm(QWidget* parent)
    : QWidget(parent), m_kind(new QComboBox), m_column(new QVBoxLayout(this)) {
  m_kind->addItems({tr("Circle"), tr("Rows and columns"), tr("Edge of a rectangle"), tr("Line"),
                    tr("Circles around one middle"), tr("Free positions")});
  m_kind->setObjectName(QStringLiteral("shapeChoice"));
  m_kind->setAccessibleName(tr("Shape"));
  m_column->setContentsMargins(0, 0, 0, 0);
  m_column->addWidget(m_kind);
  connect(m_kind, &QComboBox::activated, this, &ShapeForm::kindChosen);
}

void ShapeForm::present(const Shape& shape, const LengthUnit& unit) {
  const bool sameKind = m_body != nullptr && shape.index() == m_shape.index() && m_unit == &unit;
  m_shape = shape;
  m_unit = &unit;
  const QSignalBlocker quiet(m_kind);
  m_kind->setCurrentIndex(static_cast<int>(shape.index()));
  if (!sameKind) rebuild();
  fill();
}

void ShapeForm::add(QWidget* widget) {
  m_body->layout()->addWidget(widget);
}

void ShapeForm::rebuild() {
  delete m_body;
  m_body = new QWidget;
  auto* down = new QVBoxLayout(m_body);
  down->setContentsMargins(0, 0, 0, 0);
  m_lines.clear();
  m_circles = nullptr;
  m_anticlockwise = nullptr;
  for (const Parameter& parameter : parametersOf(m_shape.index())) {
    const Slot slot = parameter.slot(m_shape);
    QString label = tr(parameter.label);
    if (std::holds_alternative<Length*>(slot)) label = tr("%1, %2").arg(label, toQt(m_unit->symbol));
    if (std::holds_alternative<Angle*>(slot)) label = tr("%1, degrees").arg(label);
    auto* field = new NumberField({QLatin1String(parameter.name), label, {}});
    connect(field, &InputField::edited, this, &ShapeForm::edited);
    m_lines.push_back({field, parameter.slot});
    add(field);
  }
  if (m_shape.index() == kCircleKind) {
    m_anticlockwise = new QCheckBox(tr("Numbered anticlockwise"));
    m_anticlockwise->setObjectName(QStringLiteral("anticlockwiseBox"));
    connect(m_anticlockwise, &QCheckBox::clicked, this, &ShapeForm::edited);
    add(m_anticlockwise);
  }
  if (m_shape.index() == kCirclesKind) {
    m_circles =
        new InputField({QStringLiteral("circles"), tr("Count x diameter, %1").arg(toQt(m_unit->symbol)),
                        QStringLiteral("6 x 90; 12 x 200 @ 15")});
    connect(m_circles, &InputField::edited, this, &ShapeForm::edited);
    add(m_circles);
  }
  m_column->addWidget(m_body);
  orderTabs({m_kind, m_body});
}

/// What a field already says, and is being typed, stays as it is typed.
void ShapeForm::fill() {
  for (const Line& line : m_lines) {
    line.field->find({});
    const Slot slot = line.slot(m_shape);
    const auto typed = line.field->number();
    const auto show = [&](double value) {
      if (!typed || *typed != value) line.field->setNumber(value);
    };
    if (const auto* count = std::get_if<std::size_t*>(&slot)) show(static_cast<double>(**count));
    if (const auto* length = std::get_if<Length*>(&slot)) show(numberOf(numeral(**length, *m_unit)));
    if (const auto* angle = std::get_if<Angle*>(&slot)) show(numberOf(numeral(**angle, kDegree)));
  }
  if (m_anticlockwise != nullptr)
    m_anticlockwise->setChecked(std::get<Circle>(m_shape).direction == Direction::Anticlockwise);
  if (m_circles == nullptr || m_circles->edit()->hasFocus()) return;
  m_circles->find({});
  m_circles->setText(circlesText(std::get<ConcentricCircles>(m_shape), *m_unit));
}

std::optional<Shape> ShapeForm::shape() {
  Shape out = m_shape;
  bool good = true;
  const auto take = [&](NumberField* field, const auto& read, const auto& put) {
    const auto found = read;
    field->findTrouble(found ? QString() : worded(found.error()));
    if (found) put(*found);
    good = good && found;
  };
  for (const Line& line : m_lines) {
    const Slot slot = line.slot(out);
    if (const auto* count = std::get_if<std::size_t*>(&slot))
      take(line.field, line.field->count(), [&](std::size_t n) { **count = n; });
    if (const auto* length = std::get_if<Length*>(&slot))
      take(line.field, line.field->number(), [&](double n) { **length = quantity(n, *m_unit); });
    if (const auto* angle = std::get_if<Angle*>(&slot))
      take(line.field, line.field->number(), [&](double n) { **angle = degrees(n); });
  }
  if (m_anticlockwise != nullptr)
    std::get<Circle>(out).direction =
        m_anticlockwise->isChecked() ? Direction::Anticlockwise : Direction::Clockwise;
  if (m_circles != nullptr) good = readCircles(std::get<ConcentricCircles>(out)) && good;
  return good ? std::optional(out) : std::nullopt;
}

bool ShapeForm::readCircles(ConcentricCircles& into) {
  into.circles.clear();
  m_circles->find({});
  for (const QString& text : toQt(m_circles->text()).split(QLatin1Char(';'), Qt::SkipEmptyParts)) {
    const auto circle = circleIn(text, *m_unit, m_circles->numberMark());
    if (!circle) return m_circles->findTrouble(worded(circle.error())), false;
    into.circles.push_back(*circle);
  }
  return true;
}

bool ShapeForm::refuse(const Error& error) {
  const QString place = toQt(error.place);
  if (m_circles != nullptr && place.startsWith(QLatin1String("circles")))
    return m_circles->findTrouble(worded(error)), true;
  for (const Line& line : m_lines)
    if (place.endsWith(QLatin1Char('.') + line.field->name()))
      return line.field->findTrouble(worded(error)), true;
  return false;
}

}  // namespace cw
