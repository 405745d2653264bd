namespace Loadmark.Core.Gear;

/// <summary>How a plug suits a jack.</summary>
public enum PlugFit
{
    /// <summary>The plug does not go in, or makes no contact.</summary>
    None,

    /// <summary>The plug goes in but holds badly: its bore is wider than the pin.</summary>
    Loose,

    /// <summary>The plug is made for the jack.</summary>
    Good,
}
