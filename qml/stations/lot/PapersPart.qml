// SPDX-License-Identifier: GPL-3.0-or-later
// The papers of this thing, or of one of its sales, for a permit office.
import QtQuick
import ConelineWindow

Column {
    id: part

    required property Session session
    property string code: ""
    property bool unfolded: false
    property string subject: code

    spacing: 8
    visible: papers.offered
    onCodeChanged: {
        unfolded = false;
        subject = code;
    }

    PapersPrint {
        id: papers

        session: part.session
        code: part.code
    }
    Fold {
        objectName: "papers"
        text: qsTr("Papers")
        unfolded: part.unfolded
        onClicked: {
            part.unfolded = !part.unfolded;
            if (part.unfolded) {
                papers.open();
                path.text = papers.usualPath(part.subject);
            }
        }
    }
    Column {
        width: parent.width
        spacing: 8
        visible: part.unfolded

        Say {
            width: parent.width
            text: qsTr("The line back to the parents with their papers, pollinations, harvest and every disposal. No legal advice; the authority decides.")
            color: Look.quiet
        }
        Choice {
            width: parent.width
            visible: papers.subjects.length > 1
            says: qsTr("papers of")
            choices: papers.subjects
            chosen: part.subject
            onPicked: value => {
                part.subject = value;
                path.text = papers.usualPath(value);
            }
        }
        Field {
            id: path

            objectName: "papersPath"
            width: parent.width
            says: qsTr("file for the papers")
        }
        Press {
            objectName: "papersSave"
            text: qsTr("Save papers as PDF")
            weight: "act"
            onClicked: papers.save(part.subject, path.text)
        }
        Say {
            objectName: "papersTold"
            width: parent.width
            visible: text !== ""
            text: papers.fault === "" ? papers.told : papers.fault
            color: papers.fault === "" ? Look.ink : Look.lost
            Accessible.role: Accessible.AlertMessage
        }
        Repeater {
            model: papers.missing

            Say {
                required property string modelData

                width: part.width
                text: qsTr("missing: %1").arg(modelData)
                color: Look.act
            }
        }
    }
}
