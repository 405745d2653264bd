namespace Loadmark.Core.Gear;

/// <summary>The kind of a load in the user's words, and the class that those words put the load in.</summary>
/// <remarks>
/// The text is free: a tuner or a wireless receiver is as welcome as a drive. The class is found by the words in it;
/// where they say nothing electrical the class is unknown, and rules that need it say so.
/// </remarks>
public sealed record LoadKind
{
    private static readonly string[] ValveWords = ["valve", "tube"];
    private static readonly string[] ImitationWords = ["style", "like", "sound", "sounding", "voiced", "emulation", "emulator"];
    private static readonly string[] AnalogWords = ["analog", "analogue"];
    private static readonly string[] DriveWords =
        ["drive", "overdrive", "distortion", "fuzz", "boost", "booster", "compressor", "preamp", "buffer"];
    private static readonly string[] ModulationWords = ["modulation", "chorus", "phaser", "flanger", "vibrato", "tremolo", "delay", "echo"];

    /// <summary>The kinds with a class of their own, as completion offers them.</summary>
    public static IReadOnlyList<string> Known { get; } =
    [
        "analog drive", "analog distortion", "analog compressor", "analog modulation", "analog delay",
        "complex analog modulation", "complex analog delay", "digital", "large digital", "valve",
    ];

    /// <summary>Classifies a kind by its words.</summary>
    /// <param name="text">What the user calls it; not empty.</param>
    public LoadKind(string text)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(text);
        Text = text.Trim();
        var words = Text.ToLowerInvariant().Split([' ', '-', '/', ','], StringSplitOptions.RemoveEmptyEntries);
        Class = Classify(words);
        IsDigital = Class switch
        {
            LoadClass.Digital or LoadClass.LargeDigital => true,
            LoadClass.Unknown => words.Any(word => AnalogWords.Contains(word)) ? false : null,
            _ => false,
        };
    }

    /// <summary>The kind in the user's words.</summary>
    public string Text { get; }

    /// <summary>The class those words put it in.</summary>
    public LoadClass Class { get; }

    /// <summary>Whether loads of the kind are digital: true, false, or null when the kind does not tell.</summary>
    public bool? IsDigital { get; }

    /// <inheritdoc/>
    public override string ToString() => Text;

    private static LoadClass Classify(string[] words)
    {
        var imitates = words.Any(word => ImitationWords.Contains(word));
        if (!imitates && words.Any(word => ValveWords.Contains(word)))
            return LoadClass.Valve;
        if (words.Contains("digital"))
            return words.Contains("large") ? LoadClass.LargeDigital : LoadClass.Digital;
        if (words.Any(word => DriveWords.Contains(word)))
            return LoadClass.AnalogDrive;

        var modulates = words.Any(word => ModulationWords.Contains(word));
        var analog = words.Any(word => AnalogWords.Contains(word));
        if (!analog)
            return LoadClass.Unknown;
        if (words.Contains("complex"))
            return LoadClass.ComplexAnalog;
        return modulates ? LoadClass.AnalogModulation : LoadClass.Unknown;
    }
}
