namespace Loadmark.Bench;

/// <summary>Labels as people find and type them: the material for measuring and for fuzzing.</summary>
internal static class SampleLabels
{
    public static string[] All { get; } =
    [
        "9V DC 300mA", "DC9V/0.3A", "9 V ⎓ 300 mA", "9-18V DC 100mA", "9V to 18V", "9 or 12 V", "12V~ 1A", "AC 9V 1.2A", "9VAC",
        "OUTPUT: 9V⎓5A 45W", "9V 45W", "1.8 W 9 V", "INPUT 100-240V~ 50/60Hz 0.6A OUTPUT 12V⎓2A", "9V 0,3 A", "9V .5A", "9V 300ma",
        "9 volts 300 milliamps", "9V DC 12mA centre negative", "DC9V ⎓ 45mA", "9V⎓ 300mA", "12V DC 6W tip positive",
        "9 V 500 mA; 12 V 400 mA; 18 V 250 mA", "9V DC 100mA (-) center 5.5x2.1", "MODEL: PX-9V3 S/N 0012345 9V DC 80mA CLASS 2",
        "9V 60mA max. sleeve positive", "18V⎓ 250mA 5.5 × 2,5 mm", "3.5 mm jack 9V 20mA tip positive",
        "INPUT: AC 100-240V, 50-60Hz, 0.35A MAX. OUTPUT: DC 9V 1.7A", "Made in nowhere 9VDC 30mA CE", "5V⎓3A, 9V⎓3A, 15V⎓3A, 20V⎓2.25A",
    ];
}
