#include "app/pages/patterns/pattern_paper.h"

#include "app/widgets/film_painter.h"

#include <QCoreApplication>
#include <QPagedPaintDevice>
#include <QPainter>

namespace laneward {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(PatternPaper)
};

constexpr double titlePoints = 18;
constexpr double bodyPoints = 11;

class PagePainter {
public:
    PagePainter(QPainter& painter, const QRectF& page, const PatternPage& content, const Speech& speech)
        : m_painter(painter), m_page(page), m_content(content), m_speech(speech), m_y(page.top()) {
        m_shades = paperShades();
    }

    void paint() {
        m_painter.setPen(m_shades.text);
        setPoints(titlePoints, true);
        line(shown(m_content.pattern.name));
        setPoints(bodyPoints, false);
        for (const QString& fact : facts())
            line(fact);
        m_y += height() / 2;
        strokes();
        map();
    }

private:
    void setPoints(double points, bool bold) {
        QFont font = m_painter.font();
        font.setPixelSize(int(points));
        font.setBold(bold);
        m_painter.setFont(font);
    }

    double height() const { return m_painter.fontMetrics().height(); }

    void line(const QString& text) {
        QRectF box(m_page.left(), m_y, m_page.width(), m_page.height());
        box = m_painter.boundingRect(box, Qt::AlignLeading | Qt::TextWordWrap, text);
        m_painter.drawText(QRectF(m_page.left(), m_y, m_page.width(), box.height()), Qt::AlignLeading | Qt::TextWordWrap, text);
        m_y += box.height() + height() / 6;
    }

    QString conditioner(int slot) const {
        const QString name = m_content.conditioners[size_t(slot)];
        return name.isEmpty() ? m_speech.locale.toString(slot + 1) : shown(name);
    }

    QStringList facts() const {
        const Pattern& p = m_content.pattern;
        const Volumes v = volumes(p);
        QStringList facts;
        facts << Words::tr("%1, version %2. It ends at %3.")
                     .arg(shown(m_content.centre), m_speech.locale.toString(qlonglong(p.edition)), lengthText(p.end, m_speech));
        facts << Words::tr("%1 a lane: %2 out, %3 back.")
                     .arg(amountText(v.lane, m_speech), amountText(v.out, m_speech), amountText(v.back, m_speech));
        facts << (p.cleanWholeLane ? Words::tr("The clean covers the whole lane.")
                                   : Words::tr("The clean covers the oiled part only."));
        if (!p.note.isEmpty()) facts << shown(p.note);
        return facts;
    }

    /// Columns: number, way, boards, laps, dose, from to, conditioner, volume.
    void strokes() {
        const QStringList heads{Words::tr("No."),      Words::tr("Way"),       Words::tr("Boards"),      Words::tr("Laps"),
                                Words::tr("Dose, µL"), Words::tr("From – to"), Words::tr("Conditioner"), Words::tr("Volume")};
        setPoints(bodyPoints, true);
        row(heads);
        setPoints(bodyPoints, false);
        for (size_t i = 0; i < m_content.pattern.strokes.size(); ++i) {
            const Stroke& s = m_content.pattern.strokes[i];
            const auto number = [&](std::int64_t n) { return m_speech.locale.toString(qlonglong(n)); };
            row({number(std::int64_t(i) + 1), s.direction == Direction::Out ? Words::tr("out") : Words::tr("back"),
                 Words::tr("%1 – %2").arg(number(s.firstBoard), number(s.lastBoard)), number(s.laps), number(s.dose.value),
                 Words::tr("%1 – %2").arg(lengthText(s.from, m_speech), lengthText(s.to, m_speech)), conditioner(s.slot),
                 amountText(volume(s), m_speech)});
        }
        m_y += height() / 2;
    }

    void row(const QStringList& cells) {
        static constexpr std::array<double, 8> widths{0.06, 0.09, 0.13, 0.08, 0.12, 0.2, 0.18, 0.14};
        const bool rightToLeft = m_painter.layoutDirection() == Qt::RightToLeft;
        double x = 0;
        for (qsizetype i = 0; i < cells.size(); ++i) {
            const double width = m_page.width() * widths[size_t(i)];
            const double left = rightToLeft ? m_page.right() - x - width : m_page.left() + x;
            const QString text = m_painter.fontMetrics().elidedText(cells[i], Qt::ElideRight, int(width - 4));
            m_painter.drawText(QRectF(left, m_y, width, height()), Qt::AlignLeading | Qt::AlignVCenter, text);
            x += width;
        }
        m_y += height() * 1.25;
        m_painter.drawLine(QPointF(m_page.left(), m_y - height() * 0.1), QPointF(m_page.right(), m_y - height() * 0.1));
    }

    void map() {
        const QString brush = m_content.machine.isEmpty()
                                  ? Words::tr("Film without carry, in units (1 unit = 0.0167 mL per square foot):")
                                  : Words::tr("Film from the brush of %1, in units (1 unit = 0.0167 mL per square foot):")
                                        .arg(shown(m_content.machine));
        line(brush);
        const double left = m_page.bottom() - m_y;
        if (left < 8 * height()) return;
        const QRectF area(m_page.left(), m_y, std::min(m_page.width(), left), left);
        const Film laid = film(m_content.pattern, m_content.brush);
        const FilmScale scale = scaleFor(laid);
        paintFilm(m_painter, filmFrame(area, m_painter.fontMetrics()), filmImage(laid, scale, FilmColours(m_shades.base)), scale,
                  {m_shades, m_speech});
    }

    QPainter& m_painter;
    QRectF m_page;
    const PatternPage& m_content;
    const Speech& m_speech;
    Shades m_shades;
    double m_y;
};

}  // namespace

bool paintPatternPage(QPagedPaintDevice& device, const PatternPage& page, const Speech& speech) {
    QPainter painter(&device);
    if (!painter.isActive()) return false;
    painter.setLayoutDirection(speech.locale.textDirection());
    // Measured in points, whatever the device's dots are.
    const double dots = painter.device()->logicalDpiX() / 72.0;
    painter.scale(dots, dots);
    QFont font = painter.font();
    font.setPixelSize(int(bodyPoints));
    painter.setFont(font);
    const QSizeF size(painter.device()->width() / dots, painter.device()->height() / dots);
    PagePainter(painter, QRectF({0, 0}, size), page, speech).paint();
    return true;
}

}  // namespace laneward
