#include "app/shell/shop_page.h"

#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include "app/common/tab_order.h"
#include "app/common/wording.h"
#include "app/look/style.h"

namespace cw {

ShopPage::ShopPage(Workspace& workspace, QWidget* parent) : QWidget(parent), m_workspace(workspace) {
  auto* form = new QWidget;
  form->setMaximumWidth(720);
  auto* column = new QVBoxLayout(form);
  column->setContentsMargins(24, 24, 24, 24);
  column->setSpacing(8);
  auto* area = new QScrollArea;
  area->setWidget(form);
  area->setWidgetResizable(true);
  area->setFrameShape(QFrame::NoFrame);
  area->setFocusPolicy(Qt::NoFocus);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->addWidget(area);

  m_state = addHeading(*column, QString(), 1.8);
  m_said = new QLabel;
  m_said->setObjectName(QStringLiteral("saidText"));
  m_said->setForegroundRole(QPalette::BrightText);
  m_said->setWordWrap(true);
  m_said->hide();
  column->addWidget(m_said);
  addWords(*column,
           tr("One shop file holds a shop's people, tools, machines, procedure sheets and records."));
  auto* open = new QPushButton(tr("Open a shop file…"));
  open->setObjectName(QStringLiteral("openShopButton"));
  open->setProperty(kMainProperty, true);
  column->addWidget(open, 0, Qt::AlignLeft);
  column->addSpacing(24);

  addHeading(*column, tr("Or make a new one"), 1.3);
  m_name = addField(*column, tr("Name of the shop, as records print it"), "shopNameField");
  m_leadName = addField(*column, tr("Name of the person who leads it"), "leadNameField");
  m_leadSign =
      addField(*column, tr("Their sign: the short name they sign with, such as mira"), "leadSignField");
  m_leadPin = addField(*column, tr("Their PIN, 4 to 12 digits"), "leadPinField");
  m_leadPin->setEchoMode(QLineEdit::Password);
  auto* make = new QPushButton(tr("Make the shop file…"));
  make->setObjectName(QStringLiteral("makeShopButton"));
  column->addWidget(make, 0, Qt::AlignLeft);
  addWords(
      *column,
      tr("Beside the shop file a secret key file is made, which seals the records. Keep it apart from the "
         "shop file and its backups. Add people, tools and machines in the Tool crib, from a register "
         "file, and procedure sheets under Sheets."));
  m_column = column;
  column->addStretch(1);
  connect(open, &QPushButton::clicked, this, [this] {
    openFrom(QFileDialog::getOpenFileName(this, tr("Shop file to open"), QString(), tr("Shop files (*)")));
  });
  connect(make, &QPushButton::clicked, this, [this] {
    makeAt(QFileDialog::getSaveFileName(this, tr("Where the new shop file goes"),
                                        QStringLiteral("workshop.shop"), tr("Shop files (*)")));
  });
  connect(&m_workspace, &Workspace::shopChanged, this, &ShopPage::sayWhichIsOpen);
  passFocusOn(*this, *open);
  sayWhichIsOpen();
}

void ShopPage::sayWhichIsOpen() {
  m_state->setText(m_workspace.hasShop() ? tr("%1 is open").arg(toQt(m_workspace.shop().identity().name))
                                         : tr("No shop file is open"));
  m_state->setToolTip(m_workspace.hasShop() ? toQt(m_workspace.shop().file().string()) : QString());
}

QLabel* ShopPage::addHeading(QBoxLayout& column, const QString& text, double size) {
  auto* label = new QLabel(text);
  QFont larger = font();
  larger.setPointSizeF(larger.pointSizeF() * size);
  larger.setBold(true);
  label->setFont(larger);
  label->setWordWrap(true);
  column.addWidget(label);
  return label;
}

void ShopPage::addSetting(const QString& heading, QWidget* control, const QString& words) {
  delete m_column->takeAt(m_column->count() - 1);  // the stretch stays last
  m_column->addSpacing(24);
  addHeading(*m_column, heading, 1.3);
  m_column->addWidget(control, 0, Qt::AlignLeft);
  addWords(*m_column, words);
  m_column->addStretch(1);
}

void ShopPage::addWords(QBoxLayout& column, const QString& text) {
  auto* label = new QLabel(text);
  label->setForegroundRole(QPalette::PlaceholderText);
  label->setWordWrap(true);
  column.addWidget(label);
}

QLineEdit* ShopPage::addField(QBoxLayout& column, const QString& label, const char* name) {
  auto* words = new QLabel(label);
  words->setWordWrap(true);
  auto* field = new QLineEdit;
  field->setObjectName(QLatin1String(name));
  field->setAccessibleName(label);
  words->setBuddy(field);
  column.addWidget(words);
  column.addWidget(field);
  return field;
}

void ShopPage::sayTrouble(const QString& sentence) {
  m_said->setText(sentence);
  m_said->setVisible(!sentence.isEmpty());
}

void ShopPage::openFrom(const QString& file) {
  if (file.isEmpty()) return;
  const auto opened = m_workspace.openShop(file);
  sayTrouble(opened ? QString() : wordedWithPlace(opened.error()));
}

void ShopPage::makeAt(const QString& file) {
  if (file.isEmpty()) return;
  const auto made = m_workspace.createShop({file, m_name->text().trimmed(), m_leadName->text().trimmed(),
                                            m_leadSign->text().trimmed(), m_leadPin->text()});
  sayTrouble(made ? QString() : wordedWithPlace(made.error()));
}

}  // namespace cw
