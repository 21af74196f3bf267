"""Question types that no sheet asks any more: papers handed out before are marked by them."""
