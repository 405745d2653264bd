namespace Loadmark.Core.Nameplates.Parsing;

/// <summary>Figures that belong together while a label is being read: a mode, or the mains input, in the making.</summary>
internal sealed class FigureGroup
{
    public PrintedFigure? Volts { get; set; }

    public PrintedFigure? Amps { get; set; }

    public PrintedFigure? Watts { get; set; }

    /// <summary>The apparent power.</summary>
    public PrintedFigure? VoltAmps { get; set; }

    public PrintedFigure? Hertz { get; set; }

    /// <summary>Whether "typ", "max" or the like stands at one of the currents.</summary>
    public bool AmpsQualified { get; set; }

    /// <summary>Two currents are printed and nothing tells them apart; neither may be taken.</summary>
    public bool AmpsDisputed { get; set; }

    /// <summary>Two powers are printed and nothing tells them apart.</summary>
    public bool WattsDisputed { get; set; }

    /// <summary>The group was opened by a current or a power, so a second one of that kind opens the next group.</summary>
    public bool AmpsFirst { get; init; }

    /// <inheritdoc cref="AmpsFirst"/>
    public bool WattsFirst { get; init; }

    /// <summary>Whether the group's voltage is printed and could not be read, so that no other is.</summary>
    public bool VoltsLost { get; init; }

    /// <summary>The word the group stands under: input, output or mains; a new line when none does.</summary>
    public char Side { get; set; } = Sign.NewLine;

    /// <summary>Index of the outlets it is of; <see cref="FigureCollector.NoOutlet"/> when the label tells none apart.</summary>
    public int Outlet { get; set; } = FigureCollector.NoOutlet;

    /// <summary>From the group's first figure to its last.</summary>
    public Place Place
    {
        get
        {
            Place? place = null;
            Join(ref place, Volts);
            Join(ref place, Amps);
            Join(ref place, Watts);
            Join(ref place, VoltAmps);
            Join(ref place, Hertz);
            return place ?? default;
        }
    }

    /// <summary>Whether nothing was printed.</summary>
    public bool IsEmpty => !IsMode && Hertz == null && !AmpsDisputed && !WattsDisputed;

    /// <summary>Whether a voltage, a current or a power was printed.</summary>
    public bool IsMode => Volts != null || Amps != null || Watts != null || VoltAmps != null;

    private static void Join(ref Place? place, PrintedFigure? figure)
    {
        if (figure is { } printed)
            place = place?.Union(printed.Place) ?? printed.Place;
    }
}
