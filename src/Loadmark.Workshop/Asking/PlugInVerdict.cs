namespace Loadmark.Workshop.Asking;

/// <summary>The answer in a word.</summary>
public enum PlugInVerdict
{
    /// <summary>It may be plugged in, and every figure that matters is known.</summary>
    Yes,

    /// <summary>It may be plugged in if something holds that is usual, or harmless to try.</summary>
    YesIf,

    /// <summary>Something that is not known could mean harm: find it out first.</summary>
    FindOut,

    /// <summary>It may not: something would be harmed, or would not run.</summary>
    No,
}
