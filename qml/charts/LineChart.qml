// SPDX-License-Identifier: GPL-3.0-or-later
// Lines over days or months. Series are told apart by dash and by their names beside them first, by
// colour second.
import QtQuick
import QtCharts
import ConelineWindow

Item {
    id: plot

    required property Rows series
    property real across: 1
    property real highest: 0
    property string unit: ""
    /// Words along the axis: { at, word }.
    property var marks: []
    /// A band around a line: { x, low, high } from left to right.
    property var band: []
    /// A band that is still open: from a day on, between two heights.
    property var coming: null
    property string saying: ""
    property real ceiling: 1
    property var names: []
    readonly property rect area: chart.plotArea
    /// Names of lines that end close together stand one below the other.
    readonly property var nameHeights: {
        const heights = [];
        const line = Look.wide(18);
        const wide = Math.max(1, width - area.x - area.width - 8);
        // A long name takes two lines.
        const rooms = names.map(name => line * Math.ceil(name.word.length * Look.tiny * 0.6 / wide));
        for (let i = 0; i < names.length; ++i)
            heights.push(Math.max(i === 0 ? 0 : heights[i - 1] + rooms[i - 1], py(names[i].y) - 10));
        let below = area.y + area.height + 8;
        for (let i = names.length - 1; i >= 0; --i) {
            heights[i] = Math.min(heights[i], below - rooms[i]);
            below = heights[i];
        }
        return heights;
    }
    readonly property var dashes: [Qt.SolidLine, Qt.DashLine, Qt.DotLine, Qt.DashDotLine, Qt.DashDotDotLine]
    readonly property var tones: Look.mode === "night" ? ["#ECE9E0", "#56B4E9", "#E69F00", "#1FBF92", "#E293C0"] : ["#20281F", "#0072B2", "#C04E00", "#00734F", "#A8467C"]

    /// Words along the axis that would lie over each other are left out.
    readonly property int everyMark: {
        let widest = 0;
        for (const mark of marks)
            widest = Math.max(widest, mark.word.length * Look.tiny * 0.62 + 12);
        const apart = marks.length > 1 ? px(marks[1].at) - px(marks[0].at) : area.width;
        return Math.max(1, Math.ceil(widest / Math.max(1, apart)));
    }

    function px(x: real): real {
        return area.x + area.width * x / Math.max(across, 0.001);
    }
    function py(y: real): real {
        return area.y + area.height * (1 - y / Math.max(ceiling, 0.001));
    }
    function draw() {
        chart.removeAllSeries();
        let tallest = plot.highest;
        const names = [];
        let solid = 0;
        for (let i = 0; i < plot.series.count; ++i) {
            const rule = plot.series.value(i, "style") === "rule";
            // The line before it goes on, after days of which nothing is known.
            const more = plot.series.value(i, "style") === "more";
            const points = plot.series.value(i, "points");
            const line = chart.createSeries(ChartView.SeriesTypeLine, "", across_, up);
            const nth = rule || more ? solid - 1 : solid++;
            line.color = plot.tones[Math.max(0, nth) % plot.tones.length];
            line.width = rule ? 1.5 : 2.5;
            line.style = plot.series.value(i, "style") === "dash" ? Qt.DashLine : rule ? Qt.DotLine : plot.dashes[nth % plot.dashes.length];
            let last = Qt.point(0, 0);
            for (const point of points) {
                line.append(point.x, point.y);
                tallest = Math.max(tallest, point.y);
                last = point;
            }
            if (more) {
                names[names.length - 1].y = last.y;
                continue;
            }
            names.push({
                "word": plot.series.value(i, "name"),
                "tone": line.color,
                "y": last.y
            });
        }
        up.max = tallest <= 0 ? 1 : tallest;
        up.applyNiceNumbers();
        plot.ceiling = up.max;
        names.sort((a, b) => b.y - a.y);
        plot.names = names;
    }

    Accessible.role: Accessible.Chart
    Accessible.name: saying
    Component.onCompleted: draw()

    Connections {
        target: plot.series

        function onModelReset() {
            plot.draw();
        }
        function onDataChanged() {
            plot.draw();
        }
    }
    Connections {
        target: Look

        function onModeChanged() {
            plot.draw();
        }
    }
    // The figures at the side and the lines across are drawn here, since those of the chart keep the
    // colours they were made with.
    Repeater {
        model: up.tickCount // qmllint disable

        Item {
            id: level

            required property int index
            readonly property real value: up.max * index / Math.max(1, up.tickCount - 1)

            y: plot.py(value)
            width: plot.area.x + plot.area.width

            Rectangle {
                x: plot.area.x
                width: plot.area.width
                height: 1
                color: level.index === 0 ? Look.quiet : Look.rule
            }
            Words {
                y: -height / 2
                width: plot.area.x - 6
                text: level.value.toLocaleString(Qt.locale(), "f", plot.ceiling < 8 ? 1 : 0)
                horizontalAlignment: Text.AlignRight
                wrapMode: Text.NoWrap
                font.pixelSize: Look.tiny
                color: Look.quiet
            }
        }
    }
    ChartView {
        id: chart

        anchors.fill: parent
        anchors.rightMargin: Math.min(Look.wide(132), plot.width * 0.4)
        margins.left: Look.wide(40)
        margins.right: 0
        margins.top: Math.max(8, unitSaid.height - 10)
        margins.bottom: Look.wide(30)
        antialiasing: true
        backgroundColor: "transparent"
        legend.visible: false
        animationOptions: ChartView.NoAnimation
        dropShadowEnabled: false

        // The types of these axes are missing from what Qt 6.4 tells its linter.
        // qmllint disable
        ValueAxis {
            id: across_

            min: 0
            max: plot.across
            labelsVisible: false
            gridVisible: false
            lineVisible: false
        }
        ValueAxis {
            id: up

            min: 0
            max: 1
            tickCount: 5
            labelsVisible: false
            gridVisible: false
            lineVisible: false
        }
        // qmllint enable
    }
    Canvas {
        id: around

        anchors.fill: parent
        visible: plot.band.length > 0
        opacity: 0.22
        onPaint: {
            const pen = getContext("2d");
            pen.reset();
            pen.fillStyle = plot.tones[1];
            pen.beginPath();
            for (const at of plot.band)
                pen.lineTo(plot.px(at.x), plot.py(at.high));
            for (let i = plot.band.length - 1; i >= 0; --i)
                pen.lineTo(plot.px(plot.band[i].x), plot.py(plot.band[i].low));
            pen.closePath();
            pen.fill();
        }

        Connections {
            target: plot

            function onAreaChanged() {
                around.requestPaint();
            }
            function onBandChanged() {
                around.requestPaint();
            }
            function onCeilingChanged() {
                around.requestPaint();
            }
            function onAcrossChanged() {
                around.requestPaint();
            }
            function onTonesChanged() {
                around.requestPaint();
            }
        }
    }
    Say {
        id: unitSaid

        x: plot.area.x
        y: -6
        width: plot.width - x
        text: plot.unit
        font.pixelSize: Look.tiny
        color: Look.quiet
    }
    Rectangle {
        visible: plot.coming !== null
        x: plot.coming ? plot.px(plot.coming.from) : 0
        width: plot.coming ? plot.area.x + plot.area.width - x : 0
        y: plot.coming ? plot.py(plot.coming.high) : 0
        height: plot.coming ? Math.max(3, plot.py(plot.coming.low) - y) : 0
        color: Look.forecast
        opacity: 0.28
    }
    Say {
        visible: plot.coming !== null
        x: plot.area.x + plot.area.width + 8
        y: plot.coming ? Math.max(0, Math.min(plot.py(plot.coming.high) - 20, (plot.nameHeights[0] ?? 1000) - 18)) : 0
        width: plot.width - x
        text: plot.coming ? plot.coming.word : ""
        font.pixelSize: Look.tiny
        color: Look.forecast
    }
    Repeater {
        model: plot.marks

        Say {
            required property var modelData
            required property int index

            visible: index % plot.everyMark === 0

            x: Math.min(plot.px(modelData.at) - implicitWidth / 2, plot.width - implicitWidth)
            y: plot.area.y + plot.area.height + Look.wide(9) // below the figure at the side
            text: modelData.word
            font.pixelSize: Look.tiny
            color: Look.quiet
        }
    }
    Repeater {
        model: plot.names

        Say {
            required property var modelData
            required property int index

            x: plot.area.x + plot.area.width + 8
            y: plot.nameHeights[index] ?? 0
            width: plot.width - x
            text: modelData.word
            font.pixelSize: Look.tiny
            color: modelData.tone
        }
    }
}
