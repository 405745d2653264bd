using System.Collections.Immutable;
using Loadmark.Core.Readings;

namespace Loadmark.Core.Acceptance;

/// <summary>
/// Who measured what on a finished rig, when, and with which meter. Texts are as they were typed; null where nothing was.
/// </summary>
public sealed record BenchSession
{
    /// <summary>The version of the rig that was measured.</summary>
    public string? RigVersion { get; init; }

    /// <summary>Who measured.</summary>
    public string? By { get; init; }

    /// <summary>When it was measured.</summary>
    public string? Taken { get; init; }

    /// <summary>The meter.</summary>
    public string? Meter { get; init; }

    /// <summary>The meter's serial number.</summary>
    public string? Serial { get; init; }

    /// <summary>How far it may be off when it measures volts, as its maker prints it; null where that is not known.</summary>
    public PrintedAccuracy<Volt>? VoltsAccuracy { get; init; }

    /// <summary>How far it may be off when it measures amps; null where that is not known.</summary>
    public PrintedAccuracy<Ampere>? AmpsAccuracy { get; init; }

    /// <summary>The temperature, and whatever else there was to say of the place.</summary>
    public string? Ambient { get; init; }

    /// <summary>What else there is to say.</summary>
    public string? Note { get; init; }

    /// <summary>The readings by the name of the plug (<see cref="LeadLists.PlugPlace.Name"/>).</summary>
    public ImmutableDictionary<string, BenchReading> Readings { get; init; } = ImmutableDictionary<string, BenchReading>.Empty;

    /// <summary>What was measured at a plug; nothing where it was not.</summary>
    /// <param name="plug">The name of the plug.</param>
    public BenchReading Of(string plug) => Readings.GetValueOrDefault(plug) ?? new BenchReading();
}
