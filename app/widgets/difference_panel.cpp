#include "app/widgets/difference_panel.h"

#include <QAccessible>
#include <QCoreApplication>
#include <QLabel>
#include <QPainter>
#include <QVBoxLayout>

#include <algorithm>

namespace laneward {

namespace {

constexpr int panelWidth = 330;
constexpr int shownJobs = 7;
constexpr int shownFaults = 3;
constexpr int shownStock = 4;
constexpr int gap = 10;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(DifferencePanel)
};

QString signOf(const DifferenceLine& line) {
    if (line.bad) return QStringLiteral("! ");
    switch (line.kind) {
        case DifferenceLine::Kind::Removed:
            return QStringLiteral("\u00d7 ");
        case DifferenceLine::Kind::Moved:
            return QStringLiteral("\u2195 ");
        case DifferenceLine::Kind::Added:
            return QStringLiteral("+ ");
        default:
            return {};
    }
}

}  // namespace

QString differenceLines(const DifferenceText& text) {
    QStringList lines;
    for (const QString& fault : text.faults.mid(0, shownFaults))
        lines << QStringLiteral("! ") + fault;
    const int moreFaults = int(text.faults.size()) - shownFaults;
    if (moreFaults > 0) lines << Words::tr("and %n more", nullptr, moreFaults);
    int jobs = 0;
    int stock = 0;
    for (const DifferenceLine& line : text.words.lines) {
        const bool job = isAboutJobs(line.kind);
        if (job && ++jobs > shownJobs) continue;
        if (!job && jobs > shownJobs) {
            lines << Words::tr("and %n more", nullptr, jobs - shownJobs);
            jobs = 0;
        }
        if (line.kind == DifferenceLine::Kind::Stock && ++stock > shownStock) continue;
        if (line.kind != DifferenceLine::Kind::Proof) lines << signOf(line) + line.words;
    }
    if (stock > shownStock) lines << Words::tr("and %n more of the stock", nullptr, stock - shownStock);
    return lines.join(u'\n');
}

QString differenceProof(const DifferenceText& text, bool waiting) {
    if (waiting) return Words::tr("Looking at what would change…");
    if (!text.faults.isEmpty()) return Words::tr("Not possible there:");
    return text.words.lines.empty() ? QString() : text.words.lines.back().words;
}

DifferencePanel::DifferencePanel(QWidget* parent) : QFrame(parent) {
    setBackgroundRole(QPalette::Base);
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setFocusPolicy(Qt::NoFocus);
    setFixedWidth(panelWidth);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(10, 8, 10, 8);
    column->setSpacing(4);
    const auto label = [&](bool strong) {
        auto* result = new QLabel(this);
        result->setTextFormat(Qt::PlainText);
        result->setWordWrap(true);
        QFont bold = result->font();
        bold.setBold(strong);
        result->setFont(bold);
        column->addWidget(result);
        return result;
    };
    m_title = label(true);
    m_proof = label(true);
    m_sentence = label(false);
    m_lines = label(false);
    hide();
}

/// A style's own frame can hardly be seen on a dark page.
void DifferencePanel::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const Shades shades = shadesOf(palette());
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(shades.edge, 1.5));
    painter.setBrush(shades.base);
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 4, 4);
}

void DifferencePanel::fit() {
    const int wanted = layout()->hasHeightForWidth() ? layout()->totalHeightForWidth(panelWidth) : sizeHint().height();
    resize(panelWidth, wanted);
    QFrame::show();
    raise();
}

void DifferencePanel::await(const QString& title) {
    m_title->setText(title);
    m_sentence->setVisible(!m_sentence->text().isEmpty());
    m_lines->setVisible(!m_lines->text().isEmpty());
    m_proof->setText(differenceProof({}, true));
    fit();
}

void DifferencePanel::show(const DifferenceText& text) {
    m_title->setText(text.title);
    m_sentence->setText(text.words.sentence);
    m_lines->setText(differenceLines(text));
    m_proof->setText(differenceProof(text, false));
    m_sentence->show();
    m_lines->show();
    fit();
    setAccessibleName(allText());
    QAccessibleEvent spoken(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&spoken);
}

void DifferencePanel::leave() {
    hide();
    for (QLabel* label : {m_title, m_proof, m_sentence, m_lines})
        label->clear();
}

void DifferencePanel::standBeside(const QRect& ghost, const QRect& room) {
    const int roomRight = room.right() - ghost.right();
    const int roomLeft = ghost.left() - room.left();
    // It changes sides only when it must.
    if (m_right && roomRight < panelWidth + gap && roomLeft > roomRight) m_right = false;
    if (!m_right && roomLeft < panelWidth + gap && roomRight > roomLeft) m_right = true;
    const int x = m_right ? ghost.right() + gap : ghost.left() - gap - panelWidth;
    const int y = std::min(ghost.top(), room.bottom() - height() - 4);
    move(std::clamp(x, room.left(), std::max(room.left(), room.right() - panelWidth)), std::max(room.top() + 4, y));
}

void DifferencePanel::standUnder(const QRect& ghost, const QRect& room) {
    const bool under = ghost.bottom() + gap + height() <= room.bottom();
    const int y = under ? ghost.bottom() + gap : ghost.top() - gap - height();
    const int rightmost = std::max(room.left(), room.right() - panelWidth);
    move(std::clamp(ghost.left(), room.left(), rightmost), std::max(room.top() + 4, y));
}

QString DifferencePanel::allText() const {
    QStringList words;
    for (const QLabel* label : {m_title, m_proof, m_sentence, m_lines}) {
        if (!label->text().isEmpty()) words << label->text();
    }
    return words.join(u'\n');
}

}  // namespace laneward
