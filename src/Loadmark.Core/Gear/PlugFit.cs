namespace Loadmark.Core.Gear;

/// <summary>How a plug suits a jack.</summary>
public enum PlugFit
{
    /// <summary>It does not go in, or makes no contact.</summary>
    None,

    /// <summary>It goes in but holds badly: its bore is wider than the pin.</summary>
    Loose,

    /// <summary>It is made for it.</summary>
    Good,
}
